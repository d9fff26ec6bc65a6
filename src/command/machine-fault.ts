/** What failed outside the program, in words. */

interface SystemError {
  readonly code?: string;
  readonly path?: string;
  readonly dest?: string;
}

const FAULTS: Record<string, string> = {
  EACCES: "there is no permission",
  EPERM: "it is not permitted",
  EROFS: "the disk can only be read",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EFBIG: "a file may not be as large as this one",
  ENOENT: "it is not there",
  ENOTDIR: "a file stands where a folder should",
  EISDIR: "a folder stands where a file should",
};

/** A fault of the disk or the system with the file it is about; anything else is told as the program's own. */
export function machineFault(error: unknown): string {
  const { code, path, dest } = error as SystemError;
  const where = dest ?? path;
  if (code && code in FAULTS) return `${FAULTS[code]}${where ? `: ${where}` : ""}`;
  if (code) return `the system says ${code}${path ? `: ${path}` : ""}`;
  return `a fault of the program itself: ${error instanceof Error ? error.message : String(error)}`;
}
