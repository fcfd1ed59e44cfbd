"""Writes a workbook whose linked picture is not where one would look for it:
python3 disguise.py FROM.ods|FROM.xlsx TO HOW

FROM is a workbook by write_outside.py. HOW: flat (one text), utf16, utf7 (other encodings), declared (the address
is a default that the text declares), chart (the picture fills a chart), library (not a picture but a library of
macros), moved (other names for the parts of an .xlsx), renamed (as it is)."""

import re
import sys
import zipfile

source, target, how = sys.argv[1:4]
with zipfile.ZipFile(source) as archive:
    parts = {name: archive.read(name).decode() for name in archive.namelist()}
content = parts.get("content.xml", "")
address = re.search(r"http://[0-9.:]+/", "".join(parts.values())).group(0)
picture = f'xlink:href="{address}picture.png"'
spaces = re.search(r"xmlns:.*?(?= office:version)", content).group(0) if content else ""
encoded = {}


def kept_by(name, media):
    parts["META-INF/manifest.xml"] = parts["META-INF/manifest.xml"].replace(
        "</manifest:manifest>",
        f'<manifest:file-entry manifest:full-path="{name}" manifest:media-type="{media}"/></manifest:manifest>',
    )


if how == "flat":
    kind = 'office:mimetype="application/vnd.oasis.opendocument.spreadsheet"'
    text = content.replace("office:document-content", "office:document").replace(" office:version", f" {kind} office:version", 1)
    with open(target, "w", encoding="utf-8") as file:
        file.write('<?xml version="1.0" encoding="UTF-8"?>' + text)
    sys.exit()
elif how == "utf16":
    encoded["content.xml"] = ('<?xml version="1.0" encoding="UTF-16"?>' + content).encode("utf-16")
elif how == "utf7":
    parts["content.xml"] = '<?xml version="1.0" encoding="UTF-7"?>' + content.replace("<draw:image", "+ADw-draw:image")
elif how == "declared":
    default = f'<!DOCTYPE office:document-content [<!ATTLIST draw:image xlink:href CDATA "{address}picture.png">]>'
    parts["content.xml"] = default + content.replace(picture, "")
elif how == "chart":
    chart = '<draw:object xlink:type="simple" xlink:href="./Object 1"/>'
    frame = f'<draw:frame svg:width="5cm" svg:height="5cm">{chart}</draw:frame>'
    row = f"<table:table-row><table:table-cell>{frame}</table:table-cell></table:table-row>"
    parts["content.xml"] = re.sub(r"<draw:image[^>]*/>", "", content).replace("</table:table>", row + "</table:table>", 1)
    look = '<style:graphic-properties draw:fill="bitmap" draw:fill-image-name="picture"/>'
    spaces += ' xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0" xmlns:chart="urn:oasis:names:tc:opendocument:xmlns:chart:1.0"'
    parts["Object 1/content.xml"] = (
        f'<office:document-content {spaces}><office:automatic-styles><style:style style:name="a" style:family="chart">{look}'
        '</style:style></office:automatic-styles><office:body><office:chart><chart:chart chart:class="chart:bar" '
        'chart:style-name="a" svg:width="5cm" svg:height="5cm"><chart:plot-area/></chart:chart></office:chart></office:body>'
        "</office:document-content>"
    )
    parts["Object 1/styles.xml"] = (
        f'<office:document-styles {spaces}><office:styles><draw:fill-image draw:name="picture" {picture} xlink:type="simple"/>'
        "</office:styles></office:document-styles>"
    )
    kept_by("Object 1/", "application/vnd.oasis.opendocument.chart")
    for name in ("content.xml", "styles.xml"):
        kept_by("Object 1/" + name, "text/xml")
elif how == "library":
    parts["content.xml"] = re.sub(r"<draw:image[^>]*/>", "", content)
    parts["Basic/script-lc.xml"] = (
        '<!DOCTYPE library:libraries PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "libraries.dtd">'
        '<library:libraries xmlns:library="http://openoffice.org/2000/library" xmlns:xlink="http://www.w3.org/1999/xlink">'
        f'<library:library library:name="Standard" xlink:href="{address}library/script.xlb" xlink:type="simple" '
        'library:link="true"/></library:libraries>'
    )
    kept_by("Basic/script-lc.xml", "text/xml")
elif how == "moved":
    for old, new in (("drawings/", "d/"), ("worksheets/", "w/")):
        parts = {name.replace(old, new): text.replace(old, new) for name, text in parts.items()}
elif how != "renamed":
    sys.exit(f"how is '{how}'?")

with zipfile.ZipFile(target, "w") as archive:
    for name, text in parts.items():
        archive.writestr(name, encoded.get(name, text))
