import type { Command } from "commander";
import type { Session } from "./program.ts";

/** A command as the list of commands tells of it, and how to get the whole of it. */
export interface Listed {
	readonly name: string;
	/** What it takes, as its own help says; a test holds the two equal. */
	readonly takes: string;
	readonly about: string;
	/** Loads what the command needs: a run loads one command, and the list of them none. */
	readonly load: (session: Session) => Promise<Command>;
}

export const COMMANDS: readonly Listed[] = [
	{
		name: "new",
		takes: "[options] <file>",
		about: "write a starter definition to edit",
		load: async (session) => (await import("./new.ts")).newCommand(session),
	},
	{
		name: "check",
		takes: "[options] <file...>",
		about: "validate, calculate and judge; print faults and findings, the worst first",
		load: async (session) => (await import("./check.ts")).checkCommand(session),
	},
	{
		name: "bind",
		takes: "[options] <file...>",
		about: "write the papers as PDF",
		load: async (session) => (await import("./bind.ts")).bindCommand(session),
	},
	{
		name: "compare",
		takes: "[options] <file...>",
		about: "say what a revision changed: inputs, findings worst first, and the results that moved",
		load: async (session) => (await import("./compare.ts")).compareCommand(session),
	},
	{
		name: "results",
		takes: "[options] <file>",
		about: "print every value as JSON: unit, formula, source and inputs",
		load: async (session) => (await import("./results.ts")).resultsCommand(session),
	},
	{
		name: "draw",
		takes: "[options] <file>",
		about: "write the drawings as SVG, for slides and posters",
		load: async (session) => (await import("./draw.ts")).drawCommand(session),
	},
	{
		name: "explain",
		takes: "[options] <what>",
		about: "say what a code, a check, a formula or a computed value means and where it comes from",
		load: async (session) => (await import("./explain.ts")).explainCommand(session),
	},
	{
		name: "list",
		takes: "[options] <what>",
		about: "list what ships with the tool",
		load: async (session) => (await import("./list.ts")).listCommand(session),
	},
	{
		name: "schema",
		takes: "[options]",
		about: "print the JSON Schema of the definition or of the results, or a table of the definition's fields",
		load: async (session) => (await import("./schema.ts")).schemaCommand(session),
	},
	{
		name: "completion",
		takes: "[options] <shell>",
		about: "print a script that completes commands, options and files in bash, zsh or fish",
		load: async (session) => (await import("./completion.ts")).completionCommand(session),
	},
	{
		name: "manual",
		takes: "[options]",
		about: "print the manual page, for man",
		load: async (session) => (await import("./manual.ts")).manualCommand(session),
	},
];
