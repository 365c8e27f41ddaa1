import type { FileBeside } from "../source/locate-files.ts";

/**
 * Gives the bytes of a file that the definition names, beside or below it, or says in one clause why not. Whoever
 * implements it refuses names that lead elsewhere; it never throws.
 */
export type ReadFile = (name: string) => FileBeside;
