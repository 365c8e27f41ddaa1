import type { Template } from "./template.ts";

/** One question that neighbors ask, with the ways this language answers it. */
export interface Question {
	readonly ask: string;
	/** Names of the narrative that must be there for the computed answer. */
	readonly needs: readonly string[];
	readonly answer?: Template;
	/** Topic of the definition's community block that answers it in the operator's words. */
	readonly own?: string;
}

export interface QuestionGroup {
	readonly title: string;
	readonly questions: readonly Question[];
}

/** Compiles words; `place` says where they stand. */
export type CompileWithin = (place: string, source: string) => Template;

/**
 * Checks and compiles `answers/questions.yaml`.
 *
 * @throws Error naming the file and the place
 */
export const questionGroups = (
	data: unknown,
	file: string,
	compile: CompileWithin,
): readonly QuestionGroup[] => {
	const groups = isRecord(data) ? data["groups"] : undefined;
	if (!Array.isArray(groups)) throw new Error(`${file}: groups must be a list`);
	return groups.map((group: unknown, g) => {
		if (!isRecord(group) || typeof group["title"] !== "string" || !Array.isArray(group["questions"]))
			throw new Error(`${file}: groups[${g}] needs a title and questions`);
		return {
			title: group["title"],
			questions: group["questions"].map((node: unknown, q) =>
				question(node, `${file}: groups[${g}].questions[${q}]`, compile),
			),
		};
	});
};

const question = (node: unknown, where: string, compile: CompileWithin): Question => {
	if (!isRecord(node) || typeof node["ask"] !== "string") throw new Error(`${where} needs ask`);
	const { ask, needs, answer, own } = node as {
		ask: string;
		needs?: unknown;
		answer?: unknown;
		own?: unknown;
	};
	const names = Array.isArray(needs) ? needs.map(String) : [];
	if (typeof answer === "string" && names.length === 0)
		throw new Error(`${where}: an answer must name what it needs`);
	return {
		ask,
		needs: names,
		...(typeof answer === "string" ? { answer: compile(where, answer) } : {}),
		...(typeof own === "string" ? { own } : {}),
	};
};

const isRecord = (node: unknown): node is Record<string, unknown> =>
	typeof node === "object" && node !== null && !Array.isArray(node);
