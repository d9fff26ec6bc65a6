import { join } from "node:path";
import { main } from "./main.ts";
import { nodeWorld } from "./shelf/world.ts";

main(process.argv.slice(2), nodeWorld(process, join(__dirname, "open"))).then((code) => {
  process.exitCode = code;
});
