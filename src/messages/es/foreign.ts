import type { FOREIGN as ENGLISH } from "../en/foreign.ts";
import type { Translation } from "../entries.ts";

export const FOREIGN: Translation<typeof ENGLISH> = {
	"foreign/broken": "empieza como un archivo de su formato, y no lo es o está dañado",
	"foreign/las-version": "es un archivo LAS de la versión {version}; se leen las versiones 2.0 y 3.0",
	"foreign/las-no-table": "es un archivo LAS sin curvas ni datos",
	"foreign/xml-doctype": "declara un tipo de documento o entidades propias, que ninguna trayectoria necesita",
	"foreign/witsml-none": "es XML y no tiene una trayectoria con estaciones",
	"foreign/witsml-several": "tiene {count} trayectorias; deje la que corresponde",
	"foreign/witsml-units": "sus estaciones dan `{name}` en varias unidades: {units}",
	"foreign/no-workbook": "es un archivo comprimido, pero no un libro de cálculo (XLSX)",
	"foreign/workbook-large": "una parte del libro de cálculo ocupa más de 64 MB",
	"foreign/workbook-no-table":
		"ninguna de sus hojas tiene un renglón de encabezados sobre renglones de números",
	"foreign/read-as.what": "El archivo {file} se leyó como {format}: {columns}.",
	"foreign/read-as.column": "{name} de {head}",
	"foreign/read-as.north": "acimuts contados desde {north}, según el archivo",
	"foreign/read-as.why": "El archivo nombra sus columnas a su manera; la definición no dice cómo.",
};
