export const ROOT: string;
export function viteAssets(): { name: string };
export function templatesModule(folder?: string): string;
export function pageModule(): Promise<string>;
