/** Lines of `text` no wider than `width`; a word that is longer stands alone, uncut. */
export const wrap = (text: string, width: number): string[] => {
	const lines: string[] = [];
	let line = "";
	for (const word of text.split(" ")) {
		if (line !== "" && line.length + 1 + word.length > width) {
			lines.push(line);
			line = word;
		} else {
			line = line === "" ? word : `${line} ${word}`;
		}
	}
	return [...lines, line];
};
