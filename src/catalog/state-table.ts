import * as z from "zod";
import { SOURCE_KEYS } from "../cite/source-keys.ts";
import { message } from "../messages/message.ts";
import { contradiction } from "./contradiction.ts";

const degrees = (limit: number) => z.number().min(-limit).max(limit);
const known = z.strictObject({ source: z.enum(SOURCE_KEYS), known: z.string().min(1) });

const state = z
	.strictObject({
		state: z.string().min(1),
		code: z.string().regex(/^us-[a-z]{2}$/),
		api: z.string().regex(/^\d{2}$/),
		south: degrees(90),
		north: degrees(90),
		west: degrees(180),
		east: degrees(180),
	})
	.refine(({ south, north }) => south < north, {
		path: ["north"],
		...contradiction(message("seed/state.north")),
	})
	.refine(({ west, east }) => west < east, {
		path: ["east"],
		...contradiction(message("seed/state.east")),
	});

/** Form of `seeds/states.yaml`. */
export const stateSchema = z.strictObject({ boxes: known, codes: known, states: z.array(state).min(1) });

/** A state, and the box it lies in [decimal degrees]; for noticing slips, never for a rule. */
export interface StateRow {
	readonly name: string;
	/** `us-tx` */
	readonly code: string;
	/** First two digits of its API well numbers. */
	readonly api: string;
	readonly south: number;
	readonly north: number;
	readonly west: number;
	readonly east: number;
}

export const stateRows = ({ states }: z.output<typeof stateSchema>): readonly StateRow[] =>
	states.map(({ state: name, ...row }) => ({ name, ...row }));
