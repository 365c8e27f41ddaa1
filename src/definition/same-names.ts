import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import type { Path } from "../diagnostics/path.ts";
import { message } from "../messages/message.ts";
import { faultAt, isBlock, itemsAt } from "./fault.ts";

/** Lists whose items papers call by their name. */
const CALLED_BY_NAME: readonly Path[] = [
	["site", "neighbors"],
	["site", "offset_wells"],
	["site", "pad", "other_wells"],
	["geology", "formations"],
	["geology", "water"],
	["stimulation", "water_sources"],
	["stimulation", "additives"],
];

const plain = (name: string): string => name.trim().replace(/\s+/g, " ").toLowerCase();

/** Names that stand twice in a list, whatever their letter case and spaces. */
export const sameNames = (tree: unknown): readonly Diagnostic[] =>
	CALLED_BY_NAME.flatMap((list) => {
		const first = new Map<string, number>();
		return itemsAt(tree, list).flatMap((item, i) => {
			const name = isBlock(item) ? item["name"] : undefined;
			if (typeof name !== "string" || plain(name) === "") return [];
			const earlier = first.get(plain(name));
			if (earlier === undefined) {
				first.set(plain(name), i);
				return [];
			}
			return [
				faultAt({
					code: "definition/same-name",
					at: [...list, i, "name"],
					what: message("definition/same-name.what"),
					expected: message("definition/same-name.expected"),
					found: name,
					mend: message("definition/same-name.mend"),
					related: [
						{ at: { path: [...list, earlier, "name"] }, label: message("definition/same-name.label") },
					],
				}),
			];
		});
	});
