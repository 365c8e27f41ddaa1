import { isTable, type Known, type KnownTable } from "../cite/known.ts";
import { isWorse } from "../compare/changed-verdicts.ts";
import type { Changes } from "../compare/compare.ts";
import { toldCauses, toldChange, toldInput, toldValue } from "../compare/tell.ts";
import { pathKey } from "../diagnostics/path.ts";
import { type Reader, tellSaid } from "../messages/print.ts";
import { EVERY_FORMULA } from "../rules/every-formula.ts";
import { say } from "../rules/reason.ts";
import { definitionOf } from "../units/units-of.ts";
import type { StateName } from "./compare-text.ts";

/** What `compare --format json` says. Inputs are numbered from 1; results name the numbers that they rest on. */
export const changesJson = (
	changes: Changes,
	names: { readonly before: StateName; readonly after: StateName },
	reader: Reader,
): object => ({
	before: stateJson(names.before),
	after: stateJson(names.after),
	inputs: changes.inputs.map((input, i) => {
		const { name, title, was, is, note } = toldInput(input, changes, reader);
		return {
			number: i + 1,
			kind: input.kind,
			what: input.what,
			name,
			...maybe("title", title),
			...(input.what === "entry"
				? { ...place("before_at", input.before), ...place("after_at", input.after) }
				: { at: pathKey(input.at) }),
			...(input.what === "entry"
				? { ...maybe("from", input.from), ...maybe("to", input.to) }
				: { ...maybe("from", was), ...maybe("to", is) }),
			...(input.what === "file" ? { file: input.file, values: input.keys, rows: input.rows } : {}),
			...(input.what === "entry" && input.sameAmount === true ? { same_amount: true } : {}),
			...maybe("note", note),
		};
	}),
	verdicts: changes.verdicts.map((changed) => {
		const { turn, before, after } = changed;
		const of = after ?? before;
		return {
			turn,
			worse: isWorse(changed),
			rule: of?.cite.rule,
			citation: tellSaid(of?.cite.citation ?? "", reader),
			subject: of === undefined ? "" : tellSaid(of.subject, reader),
			...(before === undefined
				? {}
				: { before: { verdict: before.verdict, ...amounts(before), because: say(before.reason, reader) } }),
			...(after === undefined
				? {}
				: { after: { verdict: after.verdict, ...amounts(after), because: say(after.reason, reader) } }),
		};
	}),
	missing: changes.gaps.map(({ kind, what, at }) => ({
		kind: kind === "added" ? "now missing" : "no longer missing",
		what: tellSaid(what, reader),
		at: pathKey(at),
	})),
	deadlines: changes.days.map(({ before, after }) => ({
		rule: (after ?? before)?.rule,
		requirement: tellSaid((after ?? before)?.requirement ?? "", reader),
		before: before?.due ?? null,
		after: after?.due ?? null,
	})),
	results_compared: changes.results.compared,
	results_moved_less_than_printed: changes.results.smaller,
	results: changes.results.moved.map((moved) => ({
		key: moved.key,
		...maybe("quantity", formulaOf(moved.after ?? moved.before)),
		...(moved.before === undefined ? {} : { before: valueJson(moved.before, reader) }),
		...(moved.after === undefined ? {} : { after: valueJson(moved.after, reader) }),
		...(toldChange(moved, reader.units) === "" ? {} : { change: toldChange(moved, reader.units) }),
		from_inputs: moved.causes.map((i) => i + 1),
		...maybe("from", toldCauses(moved, reader)),
		...(moved.rows.length === 0 ? {} : { from_rows: moved.rows }),
	})),
});

const stateJson = ({ file, revision, digest, well }: StateName) => ({
	file,
	well,
	revision: revision ?? null,
	digest,
});

const maybe = (key: string, value: unknown) => (value === undefined ? {} : { [key]: value });

const place = (key: string, path: Parameters<typeof pathKey>[0] | undefined) =>
	path === undefined ? {} : { [key]: pathKey(path) };

const DIGITS = 10;

const valueJson = (value: Known | KnownTable, reader: Reader) =>
	isTable(value)
		? { rows: value.rows.length }
		: {
				value: Number(value.value.toPrecision(DIGITS)),
				unit: definitionOf(value.dimension).canonical,
				printed: toldValue(value, reader),
			};

const amounts = ({ measured, required, margin }: { measured?: Known; required?: Known; margin?: Known }) => ({
	...amount("measured", measured),
	...amount("required", required),
	...amount("margin", margin),
});

const amount = (key: string, known: Known | undefined) =>
	known === undefined ? {} : { [key]: { value: known.value, unit: definitionOf(known.dimension).canonical } };

const formulaOf = (value: Known | KnownTable | undefined): string | undefined =>
	value?.from.kind === "worked" ? EVERY_FORMULA.get(value.from.formula)?.name : undefined;
