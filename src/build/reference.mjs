/** Renews the recipe reference and the JSON Schema from the schema, and the list of messages from theirs: `npm run reference`. */
import { readFileSync, writeFileSync } from "node:fs";
import { bundled, ROOT } from "./assets.mjs";

const folder = `${ROOT}src/recipe/`;
const { renewed } = await bundled("src/recipe/reference/readme.ts");
const { messagesReadme } = await bundled("src/recipe/reference/messages.ts");
const { jsonSchema, originalSchema } = await bundled("src/recipe/reference/json-schema.ts");
writeFileSync(`${folder}README.md`, renewed(readFileSync(`${folder}README.md`, "utf8")));
writeFileSync(`${folder}messages/README.md`, messagesReadme());
writeFileSync(`${folder}recipe.schema.json`, jsonSchema());
writeFileSync(`${folder}original/original.schema.json`, originalSchema());
