"""Writes a workbook of visits whose depths are formulas that reach outside, each with a stored result:
python3 write_outside.py FILE.ods|FILE.xlsx SECRET GENERATOR WEB-ADDRESS

SECRET is the path of a workbook to refer to (without ending; the one of the same ending is meant)."""

import sys
import zipfile
from xml.sax.saxutils import escape

target, secret, generator, web = sys.argv[1:5]
ending = target[target.rfind("."):]
other = "file://" + secret + ending

# Pool, stored result, formula in either format; stored results differ from what stands outside.
rows = [
    ("B01", 12, f"of:='{other}'#$Sheet1.A1", "[1]Sheet1!A1"),
    ("B02", 13, f"of:=['{other}'#$Sheet1.A1]", "SUM([1]Sheet1!A1:A2)"),
    ("B03", 14, f"of:=VALUE(COM.MICROSOFT.WEBSERVICE(\"{web}\"))", f"VALUE(_xlfn.WEBSERVICE(\"{web}\"))"),
    ("B04", 15, f"of:=DDE(\"soffice\";\"{secret + ending}\";\"Sheet1.A1\")", "[2]!A1"),
    ("B05", 16, f"of:=['{web}other{ending}'#$Sheet1.A1]", "[3]Sheet1!A1"),
    ("B06", 17, f"of:=SUM(INDIRECT(\"'{other}'#$Sheet1.A1\"))", f"SUM(INDIRECT(\"'{other}'#$Sheet1.A1\"))"),
]


def ods(archive):
    cells = "".join(
        f"<table:table-row><table:table-cell office:value-type=\"string\"><text:p>{pool}</text:p></table:table-cell>"
        "<table:table-cell office:value-type=\"string\"><text:p>2026-06-01</text:p></table:table-cell>"
        f"<table:table-cell table:formula=\"{escape(formula, {chr(34): '&quot;'})}\" office:value-type=\"float\""
        f" office:value=\"{stored}\"><text:p>{stored}</text:p></table:table-cell></table:table-row>"
        for pool, stored, formula, _ in rows
    )
    heading = "".join(
        f"<table:table-cell office:value-type=\"string\"><text:p>{word}</text:p></table:table-cell>"
        for word in ("Pool", "Date", "Depth (in)")
    )
    names = (
        'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
        'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
        'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" '
        'xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" '
        'xmlns:svg="urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0" '
        'xmlns:xlink="http://www.w3.org/1999/xlink" '
        'xmlns:meta="urn:oasis:names:tc:opendocument:xmlns:meta:1.0" '
        'xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"'
    )
    picture = (
        f'<table:table-row><table:table-cell><draw:frame svg:width="2cm" svg:height="2cm"><draw:image xlink:type="simple" '
        f'xlink:href="{web}picture.png"/></draw:frame></table:table-cell></table:table-row>'
    )
    links = (
        f'<table:table-row><table:table-cell><table:cell-range-source table:name="Sheet1" xlink:type="simple" '
        f'xlink:href="{other}" table:last-column-spanned="1" table:last-row-spanned="1"/></table:table-cell></table:table-row>'
    )
    archive.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
    archive.writestr(
        "META-INF/manifest.xml",
        '<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">'
        '<manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/>'
        '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>'
        '<manifest:file-entry manifest:full-path="meta.xml" manifest:media-type="text/xml"/></manifest:manifest>',
    )
    archive.writestr(
        "meta.xml",
        f"<office:document-meta {names}><office:meta><meta:generator>{generator}</meta:generator></office:meta>"
        "</office:document-meta>",
    )
    archive.writestr(
        "content.xml",
        f'<office:document-content {names}><office:body><office:spreadsheet><table:table table:name="Visits">'
        f"<table:table-row>{heading}</table:table-row>{cells}</table:table>"
        f'<table:table table:name="Pictures">{picture}{links}</table:table></office:spreadsheet></office:body>'
        "</office:document-content>",
    )


def xlsx(archive):
    package = "http://schemas.openxmlformats.org/package/2006"
    main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
    office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
    kind = "application/vnd.openxmlformats-officedocument.spreadsheetml"

    def text(word, cell):
        return f'<c r="{cell}" t="inlineStr"><is><t>{word}</t></is></c>'

    lines = ["".join(text(word, f"{letter}1") for letter, word in zip("ABC", ("Pool", "Date", "Depth (in)")))]
    for number, (pool, stored, _, formula) in enumerate(rows, 2):
        lines.append(
            text(pool, f"A{number}")
            + text("2026-06-01", f"B{number}")
            + f'<c r="C{number}"><f>{escape(formula)}</f><v>{stored}</v></c>'
        )
    sheet = "".join(f'<row r="{number}">{line}</row>' for number, line in enumerate(lines, 1))
    book = f'<externalBook xmlns:r="{office}" r:id="rId1"><sheetNames><sheetName val="Sheet1"/></sheetNames></externalBook>'
    dde = '<ddeLink ddeService="soffice" ddeTopic="' + secret + ending + '"><ddeItems><ddeItem name="A1"/></ddeItems></ddeLink>'
    parts = {1: (book, other), 2: (dde, None), 3: (book, f"{web}other{ending}")}
    archive.writestr(
        "[Content_Types].xml",
        f'<Types xmlns="{package}/content-types">'
        '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
        f'<Override PartName="/xl/workbook.xml" ContentType="{kind}.sheet.main+xml"/>'
        f'<Override PartName="/xl/worksheets/sheet1.xml" ContentType="{kind}.worksheet+xml"/>'
        f'<Override PartName="/xl/drawings/drawing1.xml" ContentType="application/vnd.openxmlformats-officedocument.drawing+xml"/>'
        f'<Override PartName="/docProps/app.xml" ContentType="application/vnd.openxmlformats-officedocument.extended-properties+xml"/>'
        + "".join(
            f'<Override PartName="/xl/externalLinks/externalLink{n}.xml" ContentType="{kind}.externalLink+xml"/>' for n in parts
        )
        + "</Types>",
    )
    archive.writestr(
        "_rels/.rels",
        f'<Relationships xmlns="{package}/relationships"><Relationship Id="rId1" Type="{office}/officeDocument" '
        f'Target="xl/workbook.xml"/><Relationship Id="rId2" Type="{office}/extended-properties" Target="docProps/app.xml"/>'
        "</Relationships>",
    )
    archive.writestr(
        "docProps/app.xml",
        '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties">'
        f"<Application>{generator}</Application></Properties>",
    )
    archive.writestr(
        "xl/workbook.xml",
        f'<workbook xmlns="{main}" xmlns:r="{office}"><sheets><sheet name="Visits" sheetId="1" r:id="rId9"/></sheets>'
        "<externalReferences>" + "".join(f'<externalReference r:id="rId{n}"/>' for n in parts) + "</externalReferences></workbook>",
    )
    archive.writestr(
        "xl/_rels/workbook.xml.rels",
        f'<Relationships xmlns="{package}/relationships"><Relationship Id="rId9" Type="{office}/worksheet" '
        'Target="worksheets/sheet1.xml"/>'
        + "".join(f'<Relationship Id="rId{n}" Type="{office}/externalLink" Target="externalLinks/externalLink{n}.xml"/>' for n in parts)
        + "</Relationships>",
    )
    archive.writestr(
        "xl/worksheets/sheet1.xml",
        f'<worksheet xmlns="{main}" xmlns:r="{office}"><sheetData>{sheet}</sheetData><drawing r:id="rId1"/></worksheet>',
    )
    archive.writestr(
        "xl/worksheets/_rels/sheet1.xml.rels",
        f'<Relationships xmlns="{package}/relationships"><Relationship Id="rId1" Type="{office}/drawing" '
        'Target="../drawings/drawing1.xml"/></Relationships>',
    )
    archive.writestr(
        "xl/drawings/_rels/drawing1.xml.rels",
        f'<Relationships xmlns="{package}/relationships"><Relationship Id="rId1" Type="{office}/image" '
        f'Target="{web}picture.png" TargetMode="External"/></Relationships>',
    )
    drawing = "http://schemas.openxmlformats.org/drawingml/2006"
    archive.writestr(
        "xl/drawings/drawing1.xml",
        f'<xdr:wsDr xmlns:xdr="{drawing}/spreadsheetDrawing" xmlns:a="{drawing}/main" xmlns:r="{office}">'
        "<xdr:oneCellAnchor><xdr:from><xdr:col>5</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>2</xdr:row>"
        '<xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="720000" cy="720000"/><xdr:pic><xdr:nvPicPr>'
        '<xdr:cNvPr id="2" name="Picture"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip r:link="rId1"/>'
        '<a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x="0" y="0"/>'
        '<a:ext cx="720000" cy="720000"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>'
        "<xdr:clientData/></xdr:oneCellAnchor></xdr:wsDr>",
    )
    for n, (link, address) in parts.items():
        archive.writestr(f"xl/externalLinks/externalLink{n}.xml", f'<externalLink xmlns="{main}">{link}</externalLink>')
        if address:
            archive.writestr(
                f"xl/externalLinks/_rels/externalLink{n}.xml.rels",
                f'<Relationships xmlns="{package}/relationships"><Relationship Id="rId1" Type="{office}/externalLinkPath" '
                f'Target="{address}" TargetMode="External"/></Relationships>',
            )


with zipfile.ZipFile(target, "w") as archive:
    (ods if ending == ".ods" else xlsx)(archive)
