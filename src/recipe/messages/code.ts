/**
 * The code of every message: one that is not listed is an error of types. The lists are taken as types only, so that no
 * bundle carries what the messages mean; `list.ts` has that for the reference.
 */
import type { ATTACH } from "./attach.ts";
import type { CLOTH } from "./cloth.ts";
import type { EVIDENCE } from "./evidence.ts";
import type { FULLNESS } from "./fullness.ts";
import type { NOTEBOOK } from "./notebook.ts";
import type { ORIGINAL } from "./original.ts";
import type { RECORD } from "./record.ts";
import type { SETS } from "./sets.ts";
import type { SKIRT } from "./skirt.ts";
import type { TEXT } from "./text.ts";
import type { VALUES } from "./values.ts";
import type { WEARER } from "./wearer.ts";

export type Code =
  | keyof typeof TEXT
  | keyof typeof VALUES
  | keyof typeof WEARER
  | keyof typeof CLOTH
  | keyof typeof SKIRT
  | keyof typeof FULLNESS
  | keyof typeof ATTACH
  | keyof typeof NOTEBOOK
  | keyof typeof EVIDENCE
  | keyof typeof ORIGINAL
  | keyof typeof RECORD
  | keyof typeof SETS;
