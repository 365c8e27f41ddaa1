import { parseAst } from "rolldown/parseAst";

/** One small fault that could be made in a source: a stretch of it, and what would stand there instead. */
export interface Fault {
	readonly start: number;
	readonly end: number;
	readonly instead: string;
	/** What is changed, as a report has it: `< → <=`. */
	readonly what: string;
	/** Counted from 1. */
	readonly line: number;
}

interface Node {
	readonly type: string;
	readonly start: number;
	readonly end: number;
	readonly [key: string]: unknown;
}

/** Operators and what a slip would make of them: a bound taken in or left out, a sense turned round, a sign, a factor. */
const SLIPS: Readonly<Record<string, readonly string[]>> = {
	"<": ["<=", ">"],
	"<=": ["<", ">"],
	">": [">=", "<"],
	">=": [">", "<"],
	"===": ["!=="],
	"!==": ["==="],
	"&&": ["||"],
	"||": ["&&"],
	"+": ["-"],
	"-": ["+"],
	"*": ["/"],
	"/": ["*"],
	"**": ["*"],
};

/** Methods that are mistaken for each other. */
const METHODS: Readonly<Record<string, string>> = {
	min: "max",
	max: "min",
	some: "every",
	every: "some",
	ceil: "floor",
	floor: "ceil",
	find: "findLast",
	findLast: "find",
};

const isNode = (value: unknown): value is Node =>
	typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";

/** A little more of a figure, so that a constant that nobody checks is found; one more of a small count. */
const otherNumber = (value: number): number =>
	Number.isInteger(value) && Math.abs(value) < 10 ? value + 1 : Number((value * 1.01).toPrecision(12));

/** Every fault that could be made in a TypeScript source, in the order of its text. Types are left alone. */
export const faultsIn = (source: string): readonly Fault[] => {
	const faults: Fault[] = [];
	const lineOf = (at: number): number => source.slice(0, at).split("\n").length;
	const add = (start: number, end: number, instead: string, what?: string): void => {
		const told = what ?? `${source.slice(start, end).trim()} → ${instead}`;
		faults.push({ start, end, instead, what: told, line: lineOf(start) });
	};
	const between = (left: Node, right: Node, operator: string): number =>
		source.indexOf(operator, left.end) < right.start ? source.indexOf(operator, left.end) : -1;

	const here = (node: Node): void => {
		const { left, right, operator, test, callee } = node;
		if (node.type === "Literal" && typeof node["value"] === "number")
			add(node.start, node.end, String(otherNumber(node["value"])));
		if (typeof operator === "string" && isNode(left) && isNode(right)) {
			const at = between(left, right, operator);
			if (at >= 0) for (const slip of SLIPS[operator] ?? []) add(at, at + operator.length, slip);
		}
		if (node.type === "ConditionalExpression" && isNode(test))
			for (const always of ["true", "false"])
				add(test.start, test.end, always, `${source.slice(test.start, test.end)} ? → ${always} ?`);
		if (node.type === "IfStatement" && isNode(test)) {
			const asked = source.slice(test.start, test.end);
			add(test.start, test.end, "false", `if (${asked}) → if (false)`);
		}
		if (node.type === "UnaryExpression" && operator === "!")
			add(node.start, node.start + 1, "", "! left out");
		if (node.type === "CallExpression" && isNode(callee) && isNode(callee["property"])) {
			const method = callee["property"];
			const other = METHODS[source.slice(method.start, method.end)];
			if (other !== undefined) add(method.start, method.end, other);
		}
	};
	const walk = (value: unknown): void => {
		if (Array.isArray(value)) for (const each of value) walk(each);
		if (!isNode(value)) return;
		// Casts have types in them and expressions too; every other node of types is no code that runs.
		if (/^TS(?!As|Satisfies|NonNull)/u.test(value.type) || value.type === "ImportDeclaration") return;
		here(value);
		for (const [key, child] of Object.entries(value)) if (key !== "typeAnnotation") walk(child);
	};
	walk(parseAst(source, { lang: "ts" }).body);
	return faults.toSorted((a, b) => a.start - b.start);
};

/** The source with one fault in it. */
export const withFault = (
	source: string,
	{ start, end, instead }: Pick<Fault, "start" | "end" | "instead">,
): string => source.slice(0, start) + instead + source.slice(end);
