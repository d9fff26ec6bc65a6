import { main } from "./main.ts";
import { nodeWorld } from "./shelf/world.ts";

main(process.argv.slice(2), nodeWorld(process)).then((code) => {
  process.exitCode = code;
});
