/** Renews the recipe reference and the JSON Schema of the front matter from the schema: `npm run reference`. */
import { readFileSync, writeFileSync } from "node:fs";
import { bundled, ROOT } from "./assets.mjs";

const folder = `${ROOT}src/recipe/`;
const { renewed } = await bundled("src/recipe/reference/readme.ts");
const { jsonSchema, originalSchema } = await bundled("src/recipe/reference/json-schema.ts");
writeFileSync(`${folder}README.md`, renewed(readFileSync(`${folder}README.md`, "utf8")));
writeFileSync(`${folder}recipe.schema.json`, jsonSchema());
writeFileSync(`${folder}original/original.schema.json`, originalSchema());
