import { type TextStyle, textWidth } from "../../measure/text-width.ts";

/** Text in lines no wider than `width` [pt], broken at spaces, each line as full as it can be. A longer word overhangs. */
export const wrapped = (text: string, width: number, style: TextStyle): readonly string[] => {
	const lines: string[] = [];
	let line = "";
	for (const word of text.split(/ +/)) {
		const longer = line === "" ? word : `${line} ${word}`;
		if (line !== "" && textWidth(longer, style) > width) {
			lines.push(line);
			line = word;
		} else line = longer;
	}
	return line === "" ? lines : [...lines, line];
};
