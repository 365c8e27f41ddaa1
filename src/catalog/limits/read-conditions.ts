import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Path } from "../../diagnostics/path.ts";
import { type Message, message } from "../../messages/message.ts";
import { CHECK_IDS, CHECK_LIMITS } from "./checks.ts";
import { type Desk, mendWord, report } from "./fault.ts";
import type { Rule } from "./limit.ts";
import { readLimit } from "./read-limit.ts";

/** A condition as the definition has it; its limit is still to be read. */
interface WrittenCondition {
	readonly check: string;
	readonly string?: string;
	readonly neighbors?: readonly string[];
	readonly limit: unknown;
	readonly requirement?: string;
	readonly cite: string;
}

/** A condition of the permit as a rule of its own, or what keeps it from being judged. */
interface ReadCondition {
	readonly rule: Rule;
	/** The string it binds, where it binds one. */
	readonly string?: string;
	/** Kinds or short names of the neighbors it binds, where it binds neighbors. */
	readonly neighbors?: readonly string[];
	readonly fault?: {
		readonly what: Message;
		readonly why: Message;
		readonly at: Path;
	};
	readonly diagnostics: readonly Diagnostic[];
}

const place = (i: number): Path => ["site", "conditions", i];

const readOne = (condition: WrittenCondition, i: number): ReadCondition => {
	const desk: Desk = {
		faults: [],
		originOf: (at, text) => ({ kind: "definition", at, text }),
	};
	const check = CHECK_IDS.find((id) => id === condition.check);
	if (check === undefined)
		report(desk, {
			code: "rules/unknown-check",
			at: [...place(i), "check"],
			what: message("limits/check.what", { check: condition.check }),
			expected: message("source/one-of", { names: CHECK_IDS.join(", ") }),
			mend: mendWord(condition.check, CHECK_IDS, message("limits/check.mend")),
		});
	const limit =
		check &&
		readLimit(
			{ ...desk, subject: CHECK_LIMITS[check].subject },
			condition.limit,
			[...place(i), "limit"],
			check,
		);
	const lacksString =
		check !== undefined && CHECK_LIMITS[check].subject === "string" && condition.string === undefined;
	const lacksNeighbors =
		check !== undefined && CHECK_LIMITS[check].subject === "neighbor" && condition.neighbors === undefined;
	const fault =
		check === undefined
			? {
					what: message("limits/condition.check"),
					why: message("limits/condition.check-why"),
					at: [...place(i), "check"],
				}
			: limit === undefined
				? {
						what: message("limits/condition.limit"),
						why: message("limits/condition.limit-why"),
						at: [...place(i), "limit"],
					}
				: lacksString
					? {
							what: message("limits/condition.string"),
							why: message("limits/condition.string-why"),
							at: [...place(i), "string"],
						}
					: lacksNeighbors
						? {
								what: message("limits/condition.neighbors"),
								why: message("limits/condition.neighbors-why"),
								at: [...place(i), "neighbors"],
							}
						: undefined;
	const rule: Rule = {
		id: `permit.condition-${i + 1}`,
		check: check ?? "judgement",
		appliesTo: {
			strings: ["conductor", "surface", "intermediate", "production", "liner", "treated through"],
			neighbors: [],
			when: [],
		},
		limit: limit ?? { form: "judgement", question: "" },
		requirement: condition.requirement ?? message("limits/condition.requirement"),
		citation: condition.cite,
		standing: "not compared",
		howKnown: { way: "read" },
		textAsOf: "unknown",
		inForce: { from: "unknown" },
	};
	return {
		rule,
		...(condition.string === undefined ? {} : { string: condition.string }),
		...(condition.neighbors === undefined ? {} : { neighbors: condition.neighbors }),
		...(fault === undefined ? {} : { fault }),
		diagnostics: desk.faults,
	};
};

/** Conditions of the permit, each read with the same forms as a jurisdiction's row. */
export const readConditions = (conditions: readonly WrittenCondition[]): readonly ReadCondition[] =>
	conditions.map(readOne);

/** Every fault of the conditions, located in the definition. */
export const conditionFaults = (conditions: readonly WrittenCondition[]): readonly Diagnostic[] =>
	readConditions(conditions).flatMap(({ diagnostics }) => diagnostics);
