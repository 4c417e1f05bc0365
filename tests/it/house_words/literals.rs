//! The text between quotation marks in Rust and JSON, without comments.

/// Every string of a source with the line it begins on, as the program would print it.
pub fn of(source: &str) -> Vec<(usize, String)> {
    let mut reader = Reader {
        chars: source.chars().collect(),
        at: 0,
        line: 1,
        found: Vec::new(),
    };
    while reader.step() {}
    reader.found
}

struct Reader {
    chars: Vec<char>,
    at: usize,
    line: usize,
    found: Vec<(usize, String)>,
}

impl Reader {
    fn peek(&self, ahead: usize) -> char {
        *self.chars.get(self.at + ahead).unwrap_or(&'\0')
    }

    fn next(&mut self) -> char {
        let c = self.peek(0);
        self.line += usize::from(c == '\n');
        self.at += 1;
        c
    }

    fn step(&mut self) -> bool {
        if self.at >= self.chars.len() {
            return false;
        }
        match (self.peek(0), self.peek(1)) {
            ('/', '/') => while self.at < self.chars.len() && self.next() != '\n' {},
            ('/', '*') => self.block_comment(),
            ('"', _) => self.string(),
            ('r', '"' | '#') if !self.in_a_name() => self.raw(),
            ('b', 'r') if !self.in_a_name() && matches!(self.peek(2), '"' | '#') => {
                self.at += 1;
                self.raw();
            }
            ('\'', '\\') => {
                self.at += 3;
                while self.at < self.chars.len() && self.next() != '\'' {}
            }
            ('\'', _) if self.peek(2) == '\'' => self.at += 3,
            _ => _ = self.next(),
        }
        true
    }

    fn in_a_name(&self) -> bool {
        let before = self.at.checked_sub(1).map(|i| self.chars[i]);
        before.is_some_and(|c| c.is_alphanumeric() || c == '_')
    }

    fn block_comment(&mut self) {
        let mut depth = 0;
        while self.at < self.chars.len() {
            match (self.peek(0), self.peek(1)) {
                ('/', '*') => depth += 1,
                ('*', '/') => depth -= 1,
                _ => {
                    self.next();
                    continue;
                }
            }
            self.at += 2;
            if depth == 0 {
                return;
            }
        }
    }

    fn string(&mut self) {
        let line = self.line;
        self.at += 1;
        let mut text = String::new();
        while self.at < self.chars.len() {
            match self.next() {
                '"' => break,
                '\\' => self.escape(&mut text),
                c => text.push(c),
            }
        }
        self.found.push((line, text));
    }

    fn escape(&mut self, text: &mut String) {
        match self.next() {
            '\n' => {
                while self.peek(0).is_whitespace() {
                    self.next();
                }
            }
            'n' | 'r' | 't' => text.push('\n'),
            'u' if self.peek(0) == '{' => {
                let mut digits = String::new();
                while self.at < self.chars.len() {
                    match self.next() {
                        '}' => break,
                        c => digits.push(c),
                    }
                }
                let code = u32::from_str_radix(digits.trim_start_matches('{'), 16).ok();
                text.extend(code.and_then(char::from_u32));
            }
            c => text.push(c),
        }
    }

    fn raw(&mut self) {
        let (start, line) = (self.at, self.line);
        self.at += 1;
        let mut hashes = 0;
        while self.peek(0) == '#' {
            hashes += 1;
            self.at += 1;
        }
        if self.peek(0) != '"' {
            // A raw name, such as `r#type`.
            self.at = start + 1;
            return;
        }
        self.at += 1;
        let mut text = String::new();
        while self.at < self.chars.len() {
            let c = self.next();
            if c == '"' && (0..hashes).all(|i| self.peek(i) == '#') {
                self.at += hashes;
                break;
            }
            text.push(c);
        }
        self.found.push((line, text));
    }
}
