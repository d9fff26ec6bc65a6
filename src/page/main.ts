/** What runs inside a booklet: steps tick off and stay ticked, and any number opens its working. */
import { tickSteps } from "./ticks.ts";
import { openWorkings } from "./workings.ts";

tickSteps(document);
openWorkings(document);
