import type { PaperDocument } from "../../src/document/document.ts";
import type { Laid, LaidPage } from "../../src/render/pdf/layout/laid.ts";
import { setPaper } from "../../src/render/pdf/set-paper.ts";
import type { Tag } from "../../src/render/pdf/tags.ts";
import { blocksOf, type Found, wordsOf } from "./laid-places.ts";

/** Rows from which a table may run over pages. */
const DIVIDED_FROM = 12;
/** Lines of pairs that a page begins with at least. */
const LEAST_LINES = 2;

const roleOf = (item: Laid): Tag["role"] | undefined => item.props.tag?.role;
const isHeading = (item: Laid): boolean => ["H2", "H3", "H4"].includes(roleOf(item) ?? "");
const prints = ({ item }: Found): boolean => item.kind !== "box";

/** Share of the height of a page that its blocks take. */
const fillOf = (page: LaidPage, found: readonly Found[]): number => {
	const { top, bottom, height } = page.sheet;
	const end = Math.max(top, ...found.filter(prints).map(({ y, item }) => y + item.height));
	return (end - top) / (height - top - bottom);
};

/** Whether a page begins with a section's head: a rule, and beneath it the title. */
const beginsSection = (found: readonly Found[]): boolean => {
	const first = found.find(prints);
	return first !== undefined && roleOf(first.item) === "H2";
};

/**
 * What is wrong with how a paper falls on its pages: a short table divided, a long one that goes on without saying so, a
 * page under half full (or another share) that is not a section's last, a heading at the foot of a page, the last pairs of many at a head.
 */
export const faultsOfFill = (
	document: PaperDocument,
	continued: string,
	leastFill = 0.5,
): readonly string[] => {
	const { pages, findings } = setPaper(document);
	const found = blocksOf(pages);
	const on = pages.map((_, page) => found.filter((each) => each.page === page));
	const told = (page: number, what: string): string => `page ${page + 1} of ${pages.length}: ${what}`;
	const half = pages.flatMap((page, i) => {
		const [here, next] = [on[i] ?? [], on[i + 1]];
		const fill = fillOf(page, here);
		return next === undefined || fill >= leastFill || beginsSection(next)
			? []
			: [told(i, `${Math.round(fill * 100)} % full, and its section goes on`)];
	});
	const orphans = on.flatMap((here, i) => {
		const last = here.findLast(prints);
		return last !== undefined && isHeading(last.item) ? [told(i, `ends in ${wordsOf(last.item)}`)] : [];
	});
	const captions = on.flatMap((here, i) => {
		const last = here.findLast(prints);
		return last !== undefined && roleOf(last.item) === "Caption"
			? [told(i, `ends in ${wordsOf(last.item)}`)]
			: [];
	});
	const pieces = new Map<Tag, Found[]>();
	for (const each of found) {
		const { tag } = each.item.props;
		if (tag?.role === "Table" || tag?.role === "L") pieces.set(tag, [...(pieces.get(tag) ?? []), each]);
	}
	const divided = [...pieces].flatMap(([tag, of]) => {
		const childrenOf = ({ item }: Found): readonly Laid[] => (item.kind === "box" ? item.flow : []);
		const [first] = of;
		const places = new Set(of.map(({ page }) => page));
		if (first === undefined || places.size < 2) return [];
		if (tag.role === "L")
			return of
				.slice(1)
				.filter((piece) => piece.item.kind === "box" && piece.item.flow.length < LEAST_LINES)
				.map((piece) => told(piece.page, `begins with the last pairs of many: ${wordsOf(piece.item)}`));
		const rows = of
			.flatMap(childrenOf)
			.filter(({ props }) => props.tag?.role === "TR" && props.tag.once !== true);
		const whole = rows.reduce((sum, { height }) => sum + height, 0);
		const { top, bottom, height } = pages[first.page]?.sheet ?? { top: 0, bottom: 0, height: 0 };
		// One that no page could hold has to be divided.
		const fits = whole < 0.9 * (height - top - bottom);
		return [
			...(rows.length < DIVIDED_FROM && fits
				? [told(first.page, `a table of ${rows.length} rows is divided: ${wordsOf(rows[0] ?? first.item)}`)]
				: []),
			...of
				.slice(1)
				.filter((piece) => !wordsOf(piece.item).includes(continued))
				.map((piece) =>
					told(piece.page, `a table goes on and does not say so: ${wordsOf(piece.item).slice(0, 60)}`),
				),
		];
	});
	const unclean = findings.map(({ page, kind, text }) => told(page - 1, `${kind}: ${text}`));
	return [...unclean, ...half, ...orphans, ...captions, ...divided];
};
