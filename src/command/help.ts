/** What `plainwork --help` says. */
import version from "plainwork:version";

export const HELP = `plainwork ${version}: turns a garment recipe into an illustrated instruction booklet.

  plainwork build <recipe or folder>… [--out DIR] [--json]   write the booklets (DIR: output)
          [--pdf] [--paper a4|letter]      and print them to PDF: full pages, small pages, guides at true size
          [--size NAME]                    of a recipe with sizes only this one; what stands there of the others stays
          [--anew]                         also what has not changed since it was built
  plainwork check <recipe or folder>… [--size NAME] [--json] read and solve, write nothing
  plainwork open <folder> [--port N] [--no-browser]          the recipe beside its booklet, in a page on this machine
  plainwork check <booklet.html>… [--json]                   does today's program give the same numbers?
  plainwork record <folder> <record.json> [--json]           adds what was done, as the page saved it, to as-made.yaml
  plainwork new <folder> [--title … --waist … …]             asks for a few measures and writes a recipe
  plainwork original <folder> [--keep pitch|breadths|ratio]  an original's measures (original.yaml) become a recipe, a report and a
                                                             row of evidence.csv; without the file, the blank sheet to fill in
  plainwork --version
  plainwork --help

A folder is a project with a recipe.md in it, or a folder of such projects.
--pdf needs Chromium, or a browser made from it; the setting PLAINWORK_CHROMIUM may name its file.
Exit: 0 done, 1 a recipe has errors, 2 wrong use, 3 the machine failed (disk, permission, printing), 130 stopped.
`;
