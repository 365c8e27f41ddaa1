import type { ReactElement } from "react";
import type { Block } from "../../../document/blocks.ts";
import { textWidth } from "../../../measure/text-width.ts";
import { linkTarget } from "../../print/link-target.ts";
import { entriesOf } from "../../print/print-text.ts";
import { INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Go, type, Words } from "./primitives.tsx";

/** Widest page number that is set; the right one is painted when all pages are known. */
const PLACEHOLDER = "000";

/** Longer lists are set in two columns, and in three. */
const ONE_COLUMN = 10;
const TWO_COLUMNS = 24;
/** Of what is only looked up, longer ones stand in two already. */
const FEW = 3;
const GUTTER = 20;

/** A place of the paper: what it is told by, what it is, and the id that it stands at. */
interface Listing {
	/** An id of this paper, or of another that lies beside it. */
	readonly to: string;
	readonly number?: string;
	readonly title: string;
}

const Entry = ({
	scene,
	listing,
	width,
	number,
	size,
}: {
	scene: Scene;
	listing: Listing;
	width: number;
	/** Width of the column of numbers. */
	number: number;
	size: number;
}): ReactElement => {
	const { design } = scene;
	const line = type(size, 1.3);
	const elsewhere = listing.to.includes("#");
	const page = elsewhere ? 0 : size * 2.4;
	return (
		<Go
			src={linkTarget(listing.to, "pdf")}
			tag={{ role: "TOCI" }}
			style={{ color: INK.text, textDecoration: "none" }}
		>
			<Box
				wrap={false}
				style={{
					flexDirection: "row",
					paddingTop: design.cellY * 0.4,
					paddingBottom: design.cellY * 0.4,
					borderBottomWidth: design.rule.hair,
					borderColor: INK.hair,
				}}
			>
				{number > 0 ? (
					<Words style={{ ...line, fontWeight: 600, width: number }}>{listing.number ?? ""}</Words>
				) : null}
				<Words style={{ ...line, width: width - number - page }}>{listing.title}</Words>
				{elsewhere ? null : (
					<Words pageOf={listing.to} style={{ ...line, width: page, textAlign: "right" }}>
						{PLACEHOLDER}
					</Words>
				)}
			</Box>
		</Go>
	);
};

/** Entries down one column, two or three, under a head. */
const Listings = ({
	scene,
	title,
	listings,
	size,
}: {
	scene: Scene;
	title: string | undefined;
	listings: readonly Listing[];
	size: number;
}): ReactElement => {
	const { design } = scene;
	const one = design.setting === "reference" ? FEW : ONE_COLUMN;
	const abreast = listings.length > TWO_COLUMNS ? 3 : listings.length > one ? 2 : 1;
	const down = Math.ceil(listings.length / abreast);
	const columns = Array.from({ length: abreast }, (_, i) => listings.slice(i * down, (i + 1) * down));
	const width = (scene.width - GUTTER * (columns.length - 1)) / columns.length;
	const numbers = listings.map(({ number = "" }) => textWidth(number, { size, weight: "semibold" }));
	const widest = Math.max(0, ...numbers);
	return (
		<Box tag={{ role: "TOC", ...inSection(scene) }} style={{ marginBottom: design.step * 1.4 }}>
			{title === undefined ? null : (
				<Words
					tag={{ role: "Caption" }}
					withNext
					style={{ ...type(design.table + 0.5, 1.25, "semibold"), color: INK.heading, marginBottom: 2 }}
				>
					{title}
				</Words>
			)}
			<Box style={{ flexDirection: "row", justifyContent: "space-between" }}>
				{columns.map((column) => (
					<Box key={column[0]?.to ?? ""} style={{ width }}>
						{column.map((each) => (
							<Entry
								key={each.to}
								scene={scene}
								listing={each}
								width={width}
								number={widest === 0 ? 0 : Math.max(size * 2, widest + size)}
								size={size}
							/>
						))}
					</Box>
				))}
			</Box>
		</Box>
	);
};

/** The paper's sections, each a link, with its page; headed, unless the section they stand in is. */
export const Contents = ({ scene, section }: { scene: Scene; section: string | undefined }): ReactElement => {
	const title = scene.document.imprint.words.contents;
	return (
		<Listings
			scene={scene}
			title={title === section ? undefined : title}
			listings={scene.sections
				.filter(({ unlisted }) => unlisted !== true)
				.map(({ id, ...section }) => ({ ...section, to: id }))}
			size={scene.design.body}
		/>
	);
};

/** The paper's tables or figures by number. */
export const ListOf = ({
	block,
	scene,
}: {
	block: Extract<Block, { kind: "list-of" }>;
	scene: Scene;
}): ReactElement | null => {
	const blocks = scene.sections.flatMap((section) => section.blocks);
	const listings = entriesOf(block, blocks, scene.printing);
	return listings.length === 0 ? null : (
		<Listings scene={scene} title={block.caption} listings={listings} size={scene.design.note} />
	);
};
