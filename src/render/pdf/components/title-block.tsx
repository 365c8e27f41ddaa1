import type { ReactElement } from "react";
import { readBy } from "../../../document/document.ts";
import { textWidth } from "../../../measure/text-width.ts";
import { INK } from "../design.ts";
import { fitColumns } from "../fit-columns.ts";
import type { Scene } from "../scene.ts";
import { Boxed } from "./boxed.tsx";
import { Box, type, Words } from "./primitives.tsx";

/** Space right of each of the facts below the title [pt]. */
const GAP = 12;

/** Head of a sheet for a job: what job, and how far the sheet may be relied on; its running head says of which well. */
const SheetTitle = ({ scene }: { scene: Scene }): ReactElement => {
	const { design, sections } = scene;
	const { imprint } = scene.document;
	const [first] = sections;
	const outline = first?.headless === true ? { outline: { title: first.title, level: 1 as const } } : {};
	const state = STATE_SHARE * scene.width;
	return (
		<Box wrap={false} style={{ marginBottom: design.step }}>
			<Box style={{ flexDirection: "row", alignItems: "center" }}>
				<Words
					{...(first?.headless === true ? { id: first.id } : {})}
					tag={{ role: "H1", ...outline }}
					style={{ ...type(design.title, 1.1, "bold"), color: INK.heading, width: scene.width - state }}
				>
					{imprint.title}
				</Words>
				<Box tag={{ role: "P" }} style={{ width: state, alignItems: "flex-end" }}>
					<Boxed
						text={imprint.state}
						size={design.body}
						weight="bold"
						rule={design.rule.thick}
						room={state}
						end
					/>
				</Box>
			</Box>
			{imprint.subtitle === undefined ? null : (
				<Words tag={{ role: "P" }} style={{ ...type(design.lead, 1.2) }}>
					{imprint.subtitle}
				</Words>
			)}
		</Box>
	);
};

/** Share of the width that the state of the paper may take beside its title. */
const STATE_SHARE = 0.27;

/** Head of the first page: whose paper, of which well, what it is, and how far it may be relied on. */
export const TitleBlock = ({ scene }: { scene: Scene }): ReactElement => {
	const { design, words } = scene;
	const { imprint } = scene.document;
	const items = [
		...(imprint.apiNumber === undefined ? [] : [{ label: words.apiNumber, value: imprint.apiNumber }]),
		{ label: imprint.words.revision, value: imprint.revision },
		{ label: words.issued, value: imprint.issuedAs },
		...(imprint.validUntil === undefined ? [] : [{ label: words.validUntil, value: imprint.validUntil }]),
		{ label: words.digest, value: imprint.digest },
	].map((item) => ({ ...item, label: item.label.charAt(0).toUpperCase() + item.label.slice(1) }));
	if (design.setting === "field") return <SheetTitle scene={scene} />;
	// The regulator's first page is the answer: its title takes no more than a line needs.
	const tight = scene.document.paper !== "changes" && readBy(scene.document.paper) === "regulator";
	const compact = design.setting === "screen" || scene.document.paper === "handout";
	const stateRoom = design.setting === "screen" ? 360 : 170;
	const small = design.setting === "public" ? design.note : design.table;
	const widths = fitColumns(
		items.map(({ label, value }) => ({
			share: 1,
			least:
				Math.max(textWidth(label, { size: small }), textWidth(value, { size: small, weight: "semibold" })) +
				GAP,
		})),
		scene.width,
	);
	return (
		<Box
			wrap={false}
			style={{
				marginBottom: compact ? design.step * 1.4 : design.step * (tight ? 1.6 : 3.4),
			}}
		>
			<Box
				style={{
					flexDirection: "row",
					justifyContent: "space-between",
					alignItems: "flex-start",
				}}
			>
				<Box style={{ width: scene.width - stateRoom }}>
					<Words tag={{ role: "P" }} style={{ ...type(design.body, 1.25, "semibold") }}>
						{imprint.operator}
					</Words>
					<Words tag={{ role: "P" }} style={{ ...type(design.body, 1.25) }}>
						{imprint.well}
					</Words>
				</Box>
				<Box tag={{ role: "P" }} style={{ width: stateRoom, alignItems: "flex-end" }}>
					<Boxed
						text={imprint.state}
						size={design.body}
						weight="bold"
						rule={design.rule.thick}
						room={stateRoom}
						end
					/>
				</Box>
			</Box>
			<Words
				tag={{ role: "H1" }}
				style={{
					...type(design.title, 1.14, "bold"),
					color: INK.heading,
					marginTop: design.step * (compact ? 0.5 : tight ? 0.8 : 2.4),
				}}
			>
				{imprint.title}
			</Words>
			{imprint.subtitle === undefined ? null : (
				<Words tag={{ role: "P" }} style={{ ...type(design.lead, 1.3), marginTop: design.step * 0.4 }}>
					{imprint.subtitle}
				</Words>
			)}
			{/* A single sheet has all of it in its head and foot, and needs the room. */}
			{compact ? null : (
				<Box
					tag={{ role: "L" }}
					style={{
						flexDirection: "row",
						marginTop: design.step * (compact || tight ? 1 : 2),
						paddingTop: design.step * 0.7,
						borderTopWidth: design.rule.thick,
						borderColor: INK.heading,
					}}
				>
					{items.map((item, i) => (
						<Box key={item.label} tag={{ role: "LI" }} style={{ width: widths[i] ?? 0, paddingRight: 6 }}>
							<Words tag={{ role: "Lbl" }} style={type(small, 1.2)}>
								{item.label}
							</Words>
							<Words tag={{ role: "LBody" }} style={type(small, 1.2, "semibold")}>
								{item.value}
							</Words>
						</Box>
					))}
				</Box>
			)}
		</Box>
	);
};
