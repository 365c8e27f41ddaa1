import type { FILE as ENGLISH } from "../en/file.ts";
import type { Translation } from "../entries.ts";

export const FILE: Translation<typeof ENGLISH> = {
	"file/link.refused": "es un enlace, o está detrás de uno",
	"file/name.empty": "el nombre está vacío",
	"file/name.control": "el nombre contiene un carácter de control",
	"file/name.network": "nunca se descarga una dirección de la red",
	"file/name.root": "el nombre empieza en la raíz de un disco o en una carpeta personal",
	"file/name.backslash": "las carpetas se separan con `/`, no con `\\`",
	"file/name.upward": "el nombre sale de la carpeta de la definición",
	"file/name.empty-step": "el nombre tiene un tramo vacío",
	"file/not-found.refused": "no existe ese archivo",
	"file/not-found.unreadable": "no se puede leer: {reason}",
	"file/refused": "no se puede leer el archivo: {why}",
};
