//! Colours by role, and how layers become an SVG drawing: one dark outline
//! round each group, white seams inside it.

use super::geom::{P, Path, p};

/// Colours; nothing else may appear in a drawing.
pub mod ink {
    /// Outer line, eyes, mouth.
    pub const INK: &str = "#14262B";
    /// Dark hair.
    pub const HAIR_DARK: &str = "#2B1D1A";
    /// Brown hair, wood.
    pub const HAIR_BROWN: &str = "#7A4A2B";
    /// Fair hair, grains of sand.
    pub const HAIR_FAIR: &str = "#C98F3E";
    /// Dark cloth, adults first.
    pub const TEAL: &str = "#1F6B66";
    /// Dark cloth.
    pub const NAVY: &str = "#2F4E7A";
    /// Dark cloth, rubber.
    pub const CHARCOAL: &str = "#3B4750";
    /// Accent cloth, movement.
    pub const CORAL: &str = "#E8582F";
    /// Water.
    pub const WATER: &str = "#6FB4DE";
    /// Glass, light water.
    pub const WATER_LIGHT: &str = "#BFE3F2";
    /// The key object.
    pub const SUN: &str = "#FFC83D";
    /// Sand.
    pub const SAND: &str = "#F2DDB2";
    /// Mats, leaves.
    pub const LEAF: &str = "#6DAA5B";
    /// Metal, paving.
    pub const GREY: &str = "#9AA7AA";
    /// Pale copies.
    pub const GREY_LIGHT: &str = "#D9E0DF";
    /// White.
    pub const WHITE: &str = "#FFFFFF";
    /// Cheeks.
    pub const BLUSH: &str = "#E58A6B";
    /// Red of a warning flag and of a burning cheek; nothing else.
    pub const FLAG_RED: &str = "#C62828";
}
use ink::{INK, WHITE};

/// Width of the white seam between layers.
pub const SEAM: f64 = 2.6;

/// How a layer is painted.
#[derive(Clone, Debug)]
enum Paint {
    /// A filled outline.
    Fill,
    /// A line of this width with round ends.
    Line(f64),
    /// A line of this width with ends cut straight.
    Band(f64),
}

#[derive(Clone, Debug)]
struct Layer {
    path: Path,
    colour: &'static str,
    paint: Paint,
    /// Belongs to the silhouette and so gets the dark outline.
    solid: bool,
    /// Where the white seam runs, and how many layers below it may show on.
    seam: Option<(Path, usize)>,
}

/// Layers that share one outer outline.
#[derive(Clone, Debug)]
pub struct Group {
    layers: Vec<Layer>,
    /// Width of the dark outline outside the shapes.
    pub outline: f64,
}

impl Group {
    /// An empty group; outline 0 makes a setting without a line.
    pub fn new(outline: f64) -> Group {
        Group {
            layers: Vec::new(),
            outline,
        }
    }
    fn push(
        &mut self,
        path: Path,
        colour: &'static str,
        paint: Paint,
        solid: bool,
        seam: Option<(Path, usize)>,
    ) {
        self.layers.push(Layer {
            path,
            colour,
            paint,
            solid,
            seam,
        });
    }
    /// How many layers there are; used to say "seam against what is below now".
    pub fn depth(&self) -> usize {
        self.layers.len()
    }
    /// A filled shape of the silhouette, no seam.
    pub fn fill(&mut self, path: Path, colour: &'static str) {
        self.push(path, colour, Paint::Fill, true, None);
    }
    /// A filled shape with a white seam all round against what lies below.
    pub fn over(&mut self, path: Path, colour: &'static str) {
        let n = self.depth();
        let seam = Some((path.clone(), n));
        self.push(path, colour, Paint::Fill, true, seam);
    }
    /// A filled shape with a seam along `edge` against the lowest `below` layers.
    pub fn part(&mut self, path: Path, colour: &'static str, edge: Path, below: usize) {
        self.push(path, colour, Paint::Fill, true, Some((edge, below)));
    }
    /// A line that belongs to the silhouette (a strap, a tube, a rail).
    pub fn bar(&mut self, path: Path, colour: &'static str, width: f64) {
        let n = self.depth();
        let seam = Some((path.clone(), n));
        self.push(path, colour, Paint::Line(width), true, seam);
    }
    /// A line on top, without outline (a mouth, a slit, a cuff).
    pub fn mark(&mut self, path: Path, colour: &'static str, width: f64) {
        self.push(path, colour, Paint::Line(width), false, None);
    }
    /// The same with straight ends.
    pub fn band(&mut self, path: Path, colour: &'static str, width: f64) {
        self.push(path, colour, Paint::Band(width), false, None);
    }
    /// A small shape on top, without outline (an eye, a cheek, a pattern).
    pub fn dot(&mut self, path: Path, colour: &'static str) {
        self.push(path, colour, Paint::Fill, false, None);
    }
    /// A pale but complete copy of the group, for a movement shown by where the
    /// head was; its lines are dark enough to be read as a head.
    pub fn ghost(&self) -> Group {
        let mut g = Group::new(0.0);
        for l in self.layers.iter().filter(|l| l.solid) {
            g.mark(l.path.clone(), ink::CHARCOAL, 8.0);
        }
        for l in self.layers.iter().filter(|l| l.colour != ink::BLUSH) {
            let hair = [ink::HAIR_DARK, ink::HAIR_BROWN, ink::HAIR_FAIR].contains(&l.colour);
            let colour = match (l.solid, hair) {
                (true, true) => ink::GREY,
                (true, false) => WHITE,
                (false, _) => ink::CHARCOAL,
            };
            g.push(l.path.clone(), colour, l.paint.clone(), false, None);
        }
        g
    }
    fn bounds(&self) -> [f64; 4] {
        let mut b = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for l in &self.layers {
            let q = l.path.bounds();
            let mut m = if l.solid { self.outline } else { 0.0 };
            if let Paint::Line(w) | Paint::Band(w) = l.paint {
                m += w / 2.0;
            }
            b = [
                b[0].min(q[0] - m),
                b[1].min(q[1] - m),
                b[2].max(q[2] + m),
                b[3].max(q[3] + m),
            ];
        }
        b
    }
    /// The same group with every point moved; line widths stay.
    pub fn map(&self, f: impl Fn(P) -> P + Copy) -> Group {
        let mut g = self.clone();
        for l in &mut g.layers {
            l.path = l.path.map(f);
            l.seam = l.seam.take().map(|(s, n)| (s.map(f), n));
        }
        g
    }
    fn write(&self, out: &mut String, clips: &mut Vec<String>) {
        if self.outline > 0.0 {
            self.write_outline(out);
        }
        for l in &self.layers {
            if let Some((edge, below)) = &l.seam {
                self.write_seam(edge, *below, &l.paint, out, clips);
            }
            let d = l.path.d();
            let c = l.colour;
            out.push_str(&match l.paint {
                Paint::Fill => format!("<path d=\"{d}\" fill=\"{c}\"/>\n"),
                Paint::Line(w) => format!(
                    "<path d=\"{d}\" fill=\"none\" stroke=\"{c}\" stroke-width=\"{}\" \
                     stroke-linecap=\"round\" stroke-linejoin=\"round\"/>\n",
                    super::geom::num(w)
                ),
                Paint::Band(w) => format!(
                    "<path d=\"{d}\" fill=\"none\" stroke=\"{c}\" stroke-width=\"{}\"/>\n",
                    super::geom::num(w)
                ),
            });
        }
    }
    fn write_outline(&self, out: &mut String) {
        let w = super::geom::num(self.outline * 2.0);
        out.push_str(&format!(
            "<g fill=\"{INK}\" stroke=\"{INK}\" stroke-width=\"{w}\" stroke-linecap=\"round\" \
             stroke-linejoin=\"round\">\n"
        ));
        for l in self.layers.iter().filter(|l| l.solid) {
            out.push_str(&match l.paint {
                Paint::Fill => format!("<path d=\"{}\"/>\n", l.path.d()),
                Paint::Line(w) | Paint::Band(w) => format!(
                    "<path d=\"{}\" fill=\"none\" stroke-width=\"{}\"/>\n",
                    l.path.d(),
                    super::geom::num(w + self.outline * 2.0)
                ),
            });
        }
        out.push_str("</g>\n");
    }
    /// The seam shows only on the layers below it, so it never bites into the
    /// dark outline and leaves no fringe round its own shape. Some painters
    /// merge the shapes of a clip into one, so all run the same way round.
    fn write_seam(
        &self,
        edge: &Path,
        below: usize,
        paint: &Paint,
        out: &mut String,
        clips: &mut Vec<String>,
    ) {
        let near = edge.sample();
        let shapes: String = self.layers[..below]
            .iter()
            .filter(|l| l.solid && matches!(l.paint, Paint::Fill) && l.path.meets(&near, 4.0))
            .map(|l| l.path.clone().wound().d())
            .collect();
        if shapes.is_empty() {
            return;
        }
        let id = clips.iter().position(|c| *c == shapes).unwrap_or_else(|| {
            clips.push(shapes);
            clips.len() - 1
        });
        let w = match paint {
            Paint::Fill => SEAM * 2.0,
            Paint::Line(w) | Paint::Band(w) => w + SEAM * 2.0,
        };
        out.push_str(&format!(
            "<g clip-path=\"url(#s{id})\"><path d=\"{}\" fill=\"none\" stroke=\"{WHITE}\" \
             stroke-width=\"{}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/></g>\n",
            edge.d(),
            super::geom::num(w)
        ));
    }
}

/// A whole drawing: groups from back to front.
#[derive(Clone, Debug, Default)]
pub struct Scene {
    groups: Vec<Group>,
}

impl Scene {
    /// Puts a group in front of those already there.
    pub fn add(&mut self, g: Group) {
        self.groups.push(g);
    }
    /// Draws into a new group with an outline of `outline`, in front.
    pub fn group(&mut self, outline: f64, f: impl FnOnce(&mut Group)) {
        let mut g = Group::new(outline);
        f(&mut g);
        self.add(g);
    }
    /// Everything larger by `k`; line widths stay.
    pub fn zoom(mut self, k: f64) -> Scene {
        for g in &mut self.groups {
            *g = g.map(|q| q * k);
        }
        self
    }
    /// Left and right exchanged.
    pub fn mirrored(mut self) -> Scene {
        for g in &mut self.groups {
            *g = g.map(|q| p(240.0 - q.x, q.y));
        }
        self
    }
    /// Left, top, right, bottom of everything drawn.
    pub fn bounds(&self) -> [f64; 4] {
        let mut b = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for g in &self.groups {
            let q = g.bounds();
            b = [
                b[0].min(q[0]),
                b[1].min(q[1]),
                b[2].max(q[2]),
                b[3].max(q[3]),
            ];
        }
        b
    }
    /// Centres the drawing in the live area and scales it a little so that it
    /// fills it; beyond a few per cent the composition has to change instead.
    pub fn svg(&self, id: &str, label: &str) -> String {
        let b = self.bounds();
        let (w, h) = (b[2] - b[0], b[3] - b[1]);
        let want = 213.0 / w.max(h);
        let k = want.clamp(0.92, 1.04);
        if (want - k).abs() > 0.02 {
            eprintln!("{id}: {w:.0} by {h:.0}, would like to scale by {want:.2}");
        }
        let mid = p((b[0] + b[2]) / 2.0, (b[1] + b[3]) / 2.0);
        let fit = |q: P| (q - mid) * k + p(120.0, 120.0);
        let (mut body, mut clips) = (String::new(), Vec::new());
        for g in &self.groups {
            g.map(fit).write(&mut body, &mut clips);
        }
        let clips: String = clips
            .iter()
            .enumerate()
            .map(|(i, d)| format!("<clipPath id=\"s{i}\"><path d=\"{d}\"/></clipPath>\n"))
            .collect();
        let defs = if clips.is_empty() {
            clips
        } else {
            format!("<defs>\n{clips}</defs>\n")
        };
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">\n\
             <title>{label}</title>\n{defs}{body}</svg>\n"
        )
    }
}
