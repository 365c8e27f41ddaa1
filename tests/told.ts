import type { Said } from "../src/messages/message.ts";
import { ENGLISH_READER, tellSaid } from "../src/messages/print.ts";

/** What a stage says, in English and field units; empty where it says nothing. */
export const told = (said: Said | undefined): string =>
	said === undefined ? "" : tellSaid(said, ENGLISH_READER);

/** The same with ordinary blanks. */
export const toldPlainly = (said: Said | undefined): string => told(said).replaceAll("\u00a0", " ");
