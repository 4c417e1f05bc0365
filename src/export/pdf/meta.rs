//! What a PDF says about itself, for people and for programs.

use std::fmt::Write as _;

/// What a PDF says about itself.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Meta {
    /// What it is; shown by readers in place of the file name.
    pub title: String,
    /// What it is about, if more can be said.
    pub subject: Option<String>,
    /// The club.
    pub author: String,
    /// The date it is made for or on: year, month, day. Never read from a clock here.
    pub date: (i16, i8, i8),
}

/// The name of the program with its version, as the producer of the file.
pub(super) fn producer() -> String {
    format!("Daystrand {}", env!("CARGO_PKG_VERSION"))
}

/// A PDF date (ISO 32000-1, 7.9.4): noon, because the hour is not known.
pub(super) fn pdf_date((y, m, d): (i16, i8, i8)) -> String {
    format!("D:{y:04}{m:02}{d:02}120000Z")
}

/// The metadata packet: Dublin Core, XMP basic, PDF and PDF/UA identification.
pub(super) fn xmp(meta: &Meta, lang: &str) -> String {
    let (y, m, d) = meta.date;
    let date = format!("{y:04}-{m:02}-{d:02}T12:00:00Z");
    let (title, author, producer) = (xml(&meta.title), xml(&meta.author), xml(&producer()));
    let mut out = String::from(
        "<?xpacket begin=\"\u{feff}\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n\
         <x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n\
         <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n\
         <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" \
         xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" \
         xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n\
         <pdfuaid:part>1</pdfuaid:part>\n",
    );
    let lang = xml(lang);
    let _ = writeln!(
        out,
        "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{title}</rdf:li></rdf:Alt></dc:title>"
    );
    if !author.is_empty() {
        let _ = writeln!(
            out,
            "<dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>"
        );
    }
    if let Some(subject) = &meta.subject {
        let subject = xml(subject);
        let _ = writeln!(
            out,
            "<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">{subject}</rdf:li></rdf:Alt>\
             </dc:description>"
        );
    }
    let _ = write!(
        out,
        "<dc:language><rdf:Bag><rdf:li>{lang}</rdf:li></rdf:Bag></dc:language>\n\
         <xmp:CreatorTool>{producer}</xmp:CreatorTool>\n\
         <xmp:CreateDate>{date}</xmp:CreateDate>\n\
         <xmp:ModifyDate>{date}</xmp:ModifyDate>\n\
         <pdf:Producer>{producer}</pdf:Producer>\n\
         </rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>"
    );
    out
}

/// Text made fit for XML; characters that XML 1.0 does not allow are left out.
fn xml(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\t' | '\n' | '\r' => out.push(' '),
            c if c < ' ' || matches!(c, '\u{fffe}' | '\u{ffff}') => {}
            c => out.push(c),
        }
    }
    out
}
