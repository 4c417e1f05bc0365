//! Shame, comparing with others, praise that depends on behaviour, threats.

use super::{Remark, RemarkKind};
use crate::story::measure::tokens::Tokens;

const COMPARES: &str = "It compares with others.";
const DEPENDS: &str = "It makes being liked depend on behaviour.";
const SHAMES: &str = "It may make someone feel ashamed.";
const THREATENS: &str = "It reads as a threat.";

const JUDGING: [(&str, &str); 44] = [
    ("good children", DEPENDS),
    ("good child", DEPENDS),
    ("good kids", DEPENDS),
    ("good boy", DEPENDS),
    ("good boys", DEPENDS),
    ("good girl", DEPENDS),
    ("good girls", DEPENDS),
    ("if you are good", DEPENDS),
    ("if you're good", DEPENDS),
    ("if i am good", DEPENDS),
    ("if i'm good", DEPENDS),
    ("if i behave", DEPENDS),
    ("if you behave", DEPENDS),
    ("behave", DEPENDS),
    ("behaves", DEPENDS),
    ("well-behaved", DEPENDS),
    ("well behaved", DEPENDS),
    ("better than", COMPARES),
    ("worse than", COMPARES),
    ("as good as", COMPARES),
    ("like other children", COMPARES),
    ("like the other children", COMPARES),
    ("like everyone else", COMPARES),
    ("like the others", COMPARES),
    ("unlike others", COMPARES),
    ("other children can", COMPARES),
    ("big boys", COMPARES),
    ("big boy", COMPARES),
    ("big girls", COMPARES),
    ("big girl", COMPARES),
    ("big kids", COMPARES),
    ("a baby", SHAMES),
    ("bad boy", SHAMES),
    ("bad girl", SHAMES),
    ("bad children", SHAMES),
    ("naughty", SHAMES),
    ("shame", SHAMES),
    ("ashamed", SHAMES),
    ("embarrassing", SHAMES),
    ("stupid", SHAMES),
    ("lazy", SHAMES),
    ("in trouble", THREATENS),
    ("told off", THREATENS),
    ("punished", THREATENS),
];

pub(super) fn look(tokens: &Tokens<'_>) -> Vec<Remark> {
    let mut all: Vec<Remark> = Vec::new();
    for (phrase, why) in JUDGING {
        let last = phrase.split(' ').count() - 1;
        for i in tokens.find(phrase) {
            let at = tokens.span(i, i + last);
            // "Better than before" compares with oneself; "if I behave" is told once.
            let with_own = ["before", "last"].contains(&tokens.word(i + last + 1));
            if with_own && why == COMPARES
                || all
                    .iter()
                    .any(|r| r.at.start <= at.start && at.end <= r.at.end)
            {
                continue;
            }
            let better = match why {
                COMPARES => "Say what the reader can do, without the others.",
                DEPENDS => "Say what the reader can do, and leave out being good.",
                SHAMES => "Say plainly what happens, and what helps.",
                _ => "Say what one can do, and leave out what happens otherwise.",
            };
            all.push(Remark::on(tokens, RemarkKind::Judging, (i, i + last), why).better(better));
        }
    }
    all
}
