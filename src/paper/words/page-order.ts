import type { SheetName } from "../../document/blocks.ts";
import type { Setting } from "../../document/document.ts";

/** What stands on a page, in order: words of a template, or a part that code makes from the results. */
export type OrderItem =
	| { readonly words: string }
	| { readonly part: string }
	/** Two lists of them beside each other; `share` is the left one's of the width. */
	| {
			readonly beside: {
				readonly share: number;
				readonly left: readonly OrderItem[];
				readonly right: readonly OrderItem[];
			};
	  };

/** Every part and template of a list, however they stand. */
export const leavesOf = (
	items: readonly OrderItem[],
): readonly Exclude<OrderItem, { readonly beside: unknown }>[] =>
	items.flatMap((item) =>
		"beside" in item ? leavesOf([...item.beside.left, ...item.beside.right]) : [item],
	);

export interface OrderSection {
	readonly id: string;
	readonly title: string;
	/** Once the work is finished. */
	readonly titleDone?: string;
	readonly newPage: boolean;
	/** Keeps to one page. */
	readonly onePage: boolean;
	/** Heads what of it does not fit on its page. */
	readonly continued?: string;
	/** The paper's title heads it. */
	readonly headless: boolean;
	/** Of a numbered paper, a section without a number: a list of what follows. */
	readonly unnumbered: boolean;
	/** Set on other pages than the rest. */
	readonly sheet?: SheetName;
	readonly content: readonly OrderItem[];
}

/** The page order of one paper in one language: `templates/<language>/<paper>/order.yaml`. */
export interface PageOrder {
	readonly title: string;
	/** Of a well that has been drilled. */
	readonly titleBuilt?: string;
	/** Of the wells of a pad together. */
	readonly titleSeveral?: string;
	readonly subtitle?: string;
	/** What its sections are told by: numbers, or letters where it is read beside a paper that has numbers. */
	readonly numbered: "numbers" | "letters" | false;
	readonly setting: Setting;
	/** Set on the sheet of a job, letter or A4; on letter with wide margins where absent. */
	readonly sheet?: "job";
	readonly sections: readonly OrderSection[];
}

/**
 * Checks the shape of a page order.
 *
 * @throws Error naming the file and the place, for anything it does not know
 */
export const pageOrder = (data: unknown, file: string): PageOrder => {
	const fail = (what: string): never => {
		throw new Error(`${file}: ${what}`);
	};
	const record = (node: unknown, where: string): Record<string, unknown> =>
		typeof node === "object" && node !== null && !Array.isArray(node)
			? (node as Record<string, unknown>)
			: fail(`${where} must be a mapping`);
	const words = (node: unknown, where: string): string =>
		typeof node === "string" && node !== "" ? node : fail(`${where} must be words`);
	const itemsAt = (node: unknown, where: string): readonly OrderItem[] =>
		Array.isArray(node)
			? node.map((item: unknown, i: number) => orderItem(item, `${where}[${i}]`))
			: fail(`${where} must be a list`);
	const orderItem = (item: unknown, where: string): OrderItem => {
		const entry = record(item, where);
		if ("words" in entry) return { words: words(entry["words"], `${where}.words`) };
		if ("part" in entry) return { part: words(entry["part"], `${where}.part`) };
		if (!("beside" in entry)) return fail(`${where} must name words, a part, or what stands beside`);
		const { share, left, right } = record(entry["beside"], `${where}.beside`);
		if (typeof share !== "number" || share <= 0 || share >= 1)
			return fail(`${where}.beside.share must be a number between 0 and 1`);
		return {
			beside: {
				share,
				left: itemsAt(left, `${where}.beside.left`),
				right: itemsAt(right, `${where}.beside.right`),
			},
		};
	};
	const root = record(data, "the file");
	const sections = Array.isArray(root["sections"]) ? root["sections"] : fail("sections must be a list");
	const wanted = words(root["setting"], "setting");
	const setting = SETTINGS.find((each) => each === wanted) ?? fail(`setting "${wanted}" is unknown`);
	return {
		title: words(root["title"], "title"),
		...(root["title_built"] === undefined ? {} : { titleBuilt: words(root["title_built"], "title_built") }),
		...(root["title_several"] === undefined
			? {}
			: { titleSeveral: words(root["title_several"], "title_several") }),
		...(root["subtitle"] === undefined ? {} : { subtitle: words(root["subtitle"], "subtitle") }),
		...(root["sheet"] === "job" ? { sheet: "job" as const } : {}),
		numbered: root["numbered"] === "letters" ? "letters" : root["numbered"] === true ? "numbers" : false,
		setting,
		sections: sections.map((node: unknown, i: number) => {
			const section = record(node, `sections[${i}]`);
			const content = Array.isArray(section["content"])
				? section["content"]
				: fail(`sections[${i}].content must be a list`);
			return {
				id: words(section["id"], `sections[${i}].id`),
				title: words(section["title"], `sections[${i}].title`),
				...(section["title_done"] === undefined
					? {}
					: { titleDone: words(section["title_done"], `sections[${i}].title_done`) }),
				newPage: section["new_page"] === true,
				onePage: section["one_page"] === true,
				...(section["continued"] === undefined
					? {}
					: { continued: words(section["continued"], `sections[${i}].continued`) }),
				headless: section["headless"] === true,
				unnumbered: section["unnumbered"] === true,
				...(section["sheet"] === undefined
					? {}
					: {
							sheet: sheetName(words(section["sheet"], `sections[${i}].sheet`), fail),
						}),
				content: content.map((item: unknown, j: number) => orderItem(item, `sections[${i}].content[${j}]`)),
			};
		}),
	};
};

const SETTINGS: readonly Setting[] = ["office", "reference", "public", "lectern", "field", "screen"];
const SHEETS: readonly SheetName[] = ["letter", "letter-landscape", "screen"];

const sheetName = (name: string, fail: (what: string) => never): SheetName =>
	SHEETS.find((sheet) => sheet === name) ?? fail(`sheet "${name}" is unknown`);
