import type { ReactElement } from "react";
import { INK } from "../design.ts";
import { inSection, type Scene } from "../scene.ts";
import { Box, Go, type, Words } from "./primitives.tsx";

/** Widest page number that is set; the right one is painted when all pages are known. */
const PLACEHOLDER = "000";

/** Longer lists are set in two columns. */
const ONE_COLUMN = 14;
const GUTTER = 20;

const Entry = ({
	scene,
	section,
	width,
}: {
	scene: Scene;
	section: Scene["sections"][number];
	width: number;
}): ReactElement => {
	const { design } = scene;
	const line = type(design.body, 1.3);
	const numbered = scene.sections.some(({ number }) => number !== undefined);
	const number = numbered ? design.body * 2.4 : 0;
	const page = design.body * 3;
	return (
		<Go src={`#${section.id}`} tag={{ role: "TOCI" }} style={{ color: INK.text, textDecoration: "none" }}>
			<Box
				wrap={false}
				style={{
					flexDirection: "row",
					paddingTop: design.cellY * 0.4,
					paddingBottom: design.cellY * 0.4,
					borderBottomWidth: design.rule.hair,
					borderColor: INK.rule,
				}}
			>
				{numbered ? (
					<Words style={{ ...line, fontWeight: 600, width: number }}>{section.number ?? ""}</Words>
				) : null}
				<Words style={{ ...line, width: width - number - page }}>{section.title}</Words>
				<Words pageOf={section.id} style={{ ...line, width: page, textAlign: "right" }}>
					{PLACEHOLDER}
				</Words>
			</Box>
		</Go>
	);
};

/** The paper's sections, each a link, with its page; headed, unless the section they stand in is. */
export const Contents = ({ scene, section }: { scene: Scene; section: string | undefined }): ReactElement => {
	const { design } = scene;
	const sections = scene.sections.filter(({ unlisted }) => unlisted !== true);
	const half = Math.ceil(sections.length / 2);
	const columns = sections.length > ONE_COLUMN ? [sections.slice(0, half), sections.slice(half)] : [sections];
	const width = (scene.width - GUTTER * (columns.length - 1)) / columns.length;
	const title = scene.document.imprint.words.contents;
	return (
		<Box tag={{ role: "TOC", ...inSection(scene) }} style={{ marginBottom: design.step * 1.8 }}>
			{title === section ? null : (
				<Words
					tag={{ role: "Caption" }}
					withNext
					style={{ ...type(design.table + 0.5, 1.25, "semibold"), color: INK.heading, marginBottom: 2 }}
				>
					{title}
				</Words>
			)}
			<Box style={{ flexDirection: "row", justifyContent: "space-between" }}>
				{columns.map((sections) => (
					<Box key={sections[0]?.id ?? ""} style={{ width }}>
						{sections.map((each) => (
							<Entry key={each.id} scene={scene} section={each} width={width} />
						))}
					</Box>
				))}
			</Box>
		</Box>
	);
};
