import type { Message } from "../messages/message.ts";

/** What the form of a shipped table finds fault with: the schema library carries a text, the printer wants the message. */
interface SaidByForm {
	readonly message: string;
	readonly params: Record<string, unknown>;
}

/** A value that is not what the table holds there. */
export const unfit = (expected: Message): SaidByForm => ({ message: expected.code, params: { expected } });

/** A value that contradicts the rest of its row. */
export const contradiction = (expected: Message): SaidByForm => ({
	message: expected.code,
	params: { expected, inconsistent: true },
});
