"""Sheets of OpenDocument spreadsheets (flat XML) as LibreOffice holds them: numbers as numbers, all else as text.

Reads a JSON list of files; prints for each its sheets, each as rows of cells. Empty cells and rows at the ends are left out.
"""

import json
import sys
from xml.etree import ElementTree

TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"


def words(node):
    """Text of a paragraph; several spaces in a row and tabs are elements of their own."""
    parts = [node.text or ""]
    for child in node:
        if child.tag == f"{TEXT}s":
            parts.append(" " * int(child.get(f"{TEXT}c", "1")))
        elif child.tag == f"{TEXT}tab":
            parts.append("\t")
        elif child.tag == f"{TEXT}line-break":
            parts.append("\n")
        else:
            parts.append(words(child))
        parts.append(child.tail or "")
    return "".join(parts)


def held(cell):
    kind = cell.get(f"{OFFICE}value-type")
    if kind == "float":
        return float(cell.get(f"{OFFICE}value"))
    text = "\n".join(words(paragraph) for paragraph in cell.findall(f"{TEXT}p"))
    return text if kind in (None, "string") else f"{kind}: {text}"


def repeated(node, what):
    return int(node.get(f"{TABLE}number-{what}-repeated", "1"))


def trimmed(items, empty):
    while items and items[-1] == empty:
        items.pop()
    return items


def rows_of(table):
    rows = []
    for row in table.iter(f"{TABLE}table-row"):
        cells = []
        for cell in row:
            times = repeated(cell, "columns")
            value = held(cell)
            # A sheet is filled to its last column by one cell said a thousand times.
            cells.extend([value] * (times if value != "" else min(times, 256)))
        rows.extend([trimmed(cells, "")] * min(repeated(row, "rows"), 256))
    return trimmed(rows, [])


print(
    json.dumps(
        [
            [rows_of(table) for table in ElementTree.parse(file).iter(f"{TABLE}table")]
            for file in json.load(sys.stdin)
        ]
    )
)
