export const ROOT: string;
export function assets(options?: { readonly page?: boolean }): import("esbuild").Plugin;
export function viteAssets(): { name: string };
export function templatesModule(folder?: string): string;
export function pageModule(): Promise<string>;
export function openFiles(): Promise<Readonly<Record<string, string>>>;
