import type { Block, Cell, Column, GoesOn, Row, Section } from "../../document/blocks.ts";
import type { PaperDocument } from "../../document/document.ts";
import type { Inline } from "../../document/inline.ts";

/*
 * takes  one paper in two languages, made by the same parts from the same findings, and so block for block alike
 * gives  one paper that says each thing in both: words one after the other, the steps of a job side by side
 * may not  know a well
 */

const BETWEEN = " / ";

const said = (one: string, other: string): string => (one === other ? one : `${one}${BETWEEN}${other}`);

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

const inlines = (one: readonly Inline[], other: readonly Inline[]): readonly Inline[] =>
	same(one, other) ? one : [...one, { kind: "text", text: BETWEEN }, { kind: "emphasis", children: other }];

const inlinesOf = (cell: Cell): readonly Inline[] => {
	if (cell.kind === "rich") return cell.children;
	if (cell.kind === "quantity") return [cell];
	return cell.kind === "text" || cell.kind === "unset" ? [{ kind: "text", text: cell.text }] : [];
};

const cells = (one: Cell | undefined, other: Cell | undefined): Cell => {
	if (one === undefined || other === undefined || same(one, other)) return one ?? other ?? { kind: "none" };
	if (one.kind === "unset" && other.kind === "unset")
		return { kind: "unset", text: said(one.text, other.text) };
	return { kind: "rich", children: inlines(inlinesOf(one), inlinesOf(other)) };
};

/** The parts of a step, in the order they are read out; what stops the job begins with the word of its column. */
const STEP_PARTS = ["job_step", "hazard", "control"] as const;

const stepIn = (row: Row, columns: readonly Column[]): Cell => {
	const [name, hazard, control] = STEP_PARTS.map((id) => inlinesOf(row.cells[id] ?? { kind: "none" }));
	const stop = columns.find(({ id }) => id === "stop_if")?.head ?? "";
	const text = (words: string): Inline => ({ kind: "text", text: words });
	const last = inlinesOf(row.cells["stop_if"] ?? { kind: "none" });
	const end = last.at(-1);
	const ended = end?.kind === "text" && /[.!?]$/u.test(end.text);
	return {
		kind: "rich",
		children: [
			{ kind: "strong", children: name ?? [] },
			text(". "),
			...(hazard ?? []),
			text(". "),
			...(control ?? []),
			text(" "),
			{ kind: "strong", children: [text(`${stop}: `)] },
			...last,
			...(ended ? [] : [text(".")]),
		],
	};
};

const isSteps = (columns: readonly Column[]): boolean => columns.some(({ id }) => id === "job_step");

/** Told in both languages, counted by the first. */
const goesOn = (one: Block, other: Block): { readonly goesOn?: GoesOn } => {
	if (!("goesOn" in one && "goesOn" in other) || one.goesOn === undefined || other.goesOn === undefined)
		return {};
	const [first, second] = [one.goesOn.more, other.goesOn.more];
	return {
		goesOn: {
			...one.goesOn,
			more: { one: said(first.one, second.one), many: said(first.many, second.many) },
		},
	};
};

type Kind<K extends Block["kind"]> = Extract<Block, { kind: K }>;

/** Step for step side by side: a column a language. */
const steps = (one: Kind<"table">, other: Kind<"table">): Block => {
	const head = ({ columns }: Kind<"table">): string => columns.map((column) => column.head).join(" · ");
	return {
		...one,
		caption: said(one.caption, other.caption),
		columns: [
			{ id: "first", head: head(one), kind: "text", width: 1 },
			{ id: "second", head: head(other), kind: "text", width: 1 },
		],
		rows: one.rows.map(
			(row, i): Row => ({
				cells: {
					first: stepIn(row, one.columns),
					second: stepIn(other.rows[i] ?? { cells: {} }, other.columns),
				},
			}),
		),
	};
};

const tables = (one: Kind<"table">, other: Kind<"table">): Block =>
	isSteps(one.columns)
		? steps(one, other)
		: {
				...one,
				caption: said(one.caption, other.caption),
				columns: one.columns.map((column, i) => ({
					...column,
					head: said(column.head, other.columns[i]?.head ?? column.head),
				})),
				rows: one.rows.map((row, i) => ({
					...row,
					cells: Object.fromEntries(
						Object.entries(row.cells).map(([id, cell]) => [id, cells(cell, other.rows[i]?.cells[id])]),
					),
				})),
			};

const unlike = (one: Block, other: Block | undefined): never => {
	throw new Error(`the two languages of a sheet part: ${one.kind} beside ${other?.kind ?? "nothing"}`);
};

const block = (one: Block, other: Block | undefined): Block => {
	const made = inBoth(one, other);
	return other === undefined ? made : { ...made, ...goesOn(one, other) };
};

const inBoth = (one: Block, other: Block | undefined): Block => {
	if (other?.kind !== one.kind) return unlike(one, other);
	switch (one.kind) {
		case "heading":
			return other.kind === "heading" ? { ...one, text: said(one.text, other.text) } : unlike(one, other);
		case "paragraph":
			return other.kind === "paragraph"
				? { ...one, children: inlines(one.children, other.children) }
				: unlike(one, other);
		case "list":
			return other.kind === "list"
				? { ...one, items: one.items.map((item, i) => blocks(item, other.items[i] ?? [])) }
				: unlike(one, other);
		case "facts":
		case "figures":
			if (other.kind !== "facts" && other.kind !== "figures") return unlike(one, other);
			return {
				...one,
				...("caption" in one && one.caption !== undefined && "caption" in other
					? { caption: said(one.caption, other.caption ?? one.caption) }
					: {}),
				items: one.items.map((item, i) => ({
					...item,
					label: said(item.label, other.items[i]?.label ?? item.label),
					value: cells(item.value, other.items[i]?.value),
				})),
			};
		case "table":
			return other.kind === "table" ? tables(one, other) : unlike(one, other);
		case "callout":
			return other.kind === "callout"
				? { ...one, title: said(one.title, other.title), blocks: blocks(one.blocks, other.blocks) }
				: unlike(one, other);
		case "columns":
			return other.kind === "columns"
				? { ...one, blocks: blocks(one.blocks, other.blocks) }
				: unlike(one, other);
		case "sign-in":
			return other.kind === "sign-in"
				? {
						...one,
						columns: one.columns.map((column, i) => ({
							...column,
							head: said(column.head, other.columns[i]?.head ?? column.head),
						})),
					}
				: unlike(one, other);
		case "beside":
			return other.kind === "beside"
				? { ...one, left: blocks(one.left, other.left), right: blocks(one.right, other.right) }
				: unlike(one, other);
		case "list-of":
		case "figure":
		case "contents":
		case "page-break":
			return one;
		default:
			return one satisfies never;
	}
};

const blocks = (one: readonly Block[], other: readonly Block[]): readonly Block[] =>
	one.map((each, i) => block(each, other[i]));

/** The larger sheet that both languages may need. */
const LARGER = { field: "job-tabloid", metric: "job-a3" } as const;

/**
 * One paper of two. The digits are the same in both; which of the two was reviewed is said once, in the note of the second
 * language at the head.
 *
 * @throws Error where the two are not block for block alike: a fault of ours
 */
export const inTwoLanguages = (one: PaperDocument, other: PaperDocument): PaperDocument => ({
	...one,
	second: other.language,
	largerSheet: LARGER[one.units],
	imprint: {
		...one.imprint,
		title: said(one.imprint.title, other.imprint.title),
		state: said(one.imprint.state, other.imprint.state),
		caution: said(one.imprint.caution, other.imprint.caution),
	},
	sections: one.sections.map((section, i): Section => {
		const beside = other.sections[i];
		return {
			...section,
			title: said(section.title, beside?.title ?? section.title),
			...(section.goesOn === undefined || beside?.goesOn === undefined
				? {}
				: {
						goesOn: {
							...section.goesOn,
							title: said(section.goesOn.title, beside.goesOn.title),
							readAlso: said(section.goesOn.readAlso, beside.goesOn.readAlso),
						},
					}),
			blocks: blocks(section.blocks, beside?.blocks ?? []),
		};
	}),
});
