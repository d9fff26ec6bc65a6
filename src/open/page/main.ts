/** The page that `plainwork open` shows: the recipe as text on one side, its living booklet on the other. */
import { completeBody } from "./complete/body.ts";
import { completeFront } from "./complete/front.ts";
import { fetchProject } from "./link.ts";
import { Sitting } from "./sitting.ts";

const nonce = document.currentScript instanceof HTMLScriptElement ? document.currentScript.nonce : "";

async function start(): Promise<void> {
  const root = document.getElementById("page") as HTMLElement;
  const project = await fetchProject();
  if (!project) {
    root.textContent =
      "The recipe could not be opened: this page’s server does not answer. Start plainwork open again, and open the link that it prints.";
    return;
  }
  const sitting = new Sitting(root, nonce, project, (plan) => [completeFront, completeBody(plan)]);
  await sitting.begin();
}

void start();
