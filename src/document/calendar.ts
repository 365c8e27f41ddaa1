/** Days to keep, ready for a renderer of calendars. */
export interface CalendarDocument {
	readonly name: string;
	readonly language: string;
	/** The definition's date of issue, ISO 8601: the stamp of every entry. */
	readonly issued: string;
	/** How often the definition was issued before; a later issue's entries replace an earlier one's. */
	readonly sequence: number;
	readonly entries: readonly CalendarEntry[];
}

interface CalendarEntry {
	/** The same for the same deadline of the same well in every issue. */
	readonly id: string;
	/** A whole day, ISO 8601. */
	readonly day: string;
	readonly summary: string;
	readonly description: string;
}
