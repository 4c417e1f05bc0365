// Judges stories for a telephone in Chromium: nothing is fetched, nothing is complained of, axe finds
// no fault; every page is reached by keys, by swipes and by buttons; a step is done and taken back;
// focus is seen; letters twice as large lose nothing; without the script everything is there.
import { createRequire } from "node:module";
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [what, from, to] = process.argv.slice(2);

// A telephone held upright, and a small computer.
const SIZES = {
  phone: { width: 360, height: 740, hasTouch: true, isMobile: true },
  desk: { width: 1280, height: 800 },
};

// A second language for everyone in the demo, as far as sentences that every story says. Nobody has
// read it through, and the file says so.
const ARABIC = {
  "I can ask": "أستطيع أن أطلب",
  "I can ask at any time.": "أستطيع أن أطلب في أي وقت.",
  "What can change": "ما الذي قد يتغير",
  "The plan may change.": "قد تتغير الخطة.",
  "One tile comes off and a new tile goes on.": "تُرفع بطاقة وتوضع بطاقة جديدة.",
  "How it ends": "كيف ينتهي اليوم",
};

async function judge(work, pictures) {
  const require = createRequire(join(work, "package.json"));
  const puppeteer = require("puppeteer-core");
  const axe = require("axe-core").source;
  const chosen = choose(work);
  const executablePath = ["/usr/bin/chromium", "/usr/bin/chromium-browser"].find(existsSync);
  const browser = await puppeteer.launch({ executablePath, args: ["--no-sandbox"] });
  let seen = 0;
  try {
    for (const [name, file] of Object.entries(chosen)) {
      for (const size of ["phone", "desk"]) {
        for (const scheme of ["light", "dark"]) {
          const look = { browser, axe, name, file, size, scheme, pictures };
          seen += await asAFamily(look);
        }
      }
      await large({ browser, name, file, pictures });
      await withoutScript({ browser, axe, name, file });
    }
  } finally {
    await browser.close();
  }
  console.log(`${Object.keys(chosen).length} stories for a telephone, ${seen} pages seen: nothing fetched, no fault found`);
}

// One story of each sort.
function choose(work) {
  const all = (folder) =>
    readdirSync(join(work, folder), { recursive: true })
      .filter((f) => f.endsWith(".html"))
      .sort()
      .map((f) => join(work, folder, f));
  const has = (words) => (f) => readFileSync(f, "utf8").includes(words);
  const stories = all("stories");
  return {
    whole: need(stories.find((f) => !has('<ol class="day">')(f)), "a whole story"),
    again: need(stories.find(has('<ol class="day">')), "a story of someone who was here before"),
    two: need(all("two").find((f) => has("How it ends</h2>")(f) && has('dir="rtl"')(f)), "a story in two languages"),
  };
}

function need(what, name) {
  if (!what) throw new Error(`there is no ${name}`);
  return what;
}

async function open({ browser, file, size, scheme, script = true, still = false, letters }, faults) {
  const page = await browser.newPage();
  await page.setViewport({ deviceScaleFactor: 1, ...SIZES[size] });
  await page.setJavaScriptEnabled(script);
  await page.emulateMediaFeatures([
    { name: "prefers-color-scheme", value: scheme },
    { name: "prefers-reduced-motion", value: still ? "reduce" : "no-preference" },
  ]);
  if (letters) {
    const session = await page.createCDPSession();
    await session.send("Page.enable");
    await session.send("Page.setFontSizes", { fontSizes: { standard: letters, fixed: letters } });
  }
  const url = pathToFileURL(file).href;
  page.on("request", (r) => {
    if (r.url() !== url && !r.url().startsWith("data:")) faults.push(`asks for ${r.url()}`);
  });
  page.on("console", (m) => faults.push(`console: ${m.text()}`));
  page.on("pageerror", (e) => faults.push(`error: ${e.message}`));
  await page.goto(url, { waitUntil: "load" });
  await page.evaluate(() => document.fonts.ready);
  return page;
}

const state = (page) =>
  page.evaluate(() => {
    const shown = [...document.querySelectorAll(".page")].filter((p) => p.offsetParent);
    const at = [...document.querySelectorAll(".page")].indexOf(shown[0]);
    const focus = document.activeElement;
    const ring = getComputedStyle(focus);
    const small = [...document.querySelectorAll("button")]
      .filter((b) => b.offsetParent)
      .map((b) => b.getBoundingClientRect())
      .filter((b) => b.width < 48 || b.height < 48).length;
    return {
      shown: shown.length,
      at,
      count: document.querySelectorAll(".page").length,
      said: document.querySelector(".live").textContent,
      focus: focus.tagName,
      ring: focus.matches(":focus-visible") && ring.outlineStyle !== "none" && parseFloat(ring.outlineWidth) >= 2,
      wide: document.documentElement.scrollWidth - innerWidth,
      small,
      gone: document.querySelectorAll(".finished li").length,
      moving: document.getAnimations().length,
    };
  });

async function asAFamily(look) {
  const { axe, name, size, scheme, pictures } = look;
  const faults = [];
  const page = await open(look, faults);
  const check = (ok, words) => ok || faults.push(words);
  const where = async (wanted, by) => {
    const s = await state(page);
    check(s.shown === 1 && s.at === wanted, `${by}: page ${s.at + 1} of ${s.shown} shown, not ${wanted + 1}`);
    check(s.wide <= 0, `${by}: wider than the screen by ${s.wide}`);
    check(s.small === 0, `${by}: ${s.small} buttons are smaller than 48`);
    return s;
  };
  await page.evaluate(axe);
  // Pages that are made of the same pieces are judged once in each size and colour.
  const kinds = new Set();
  const last = (await where(0, "at first")).count - 1;

  // By keys, each page before axe; focus goes along and is seen, and the page is told.
  for (let i = 0; i <= last; i++) {
    const s = await where(i, "arrow right");
    if (i > 0) {
      check(s.focus === "H2" && s.ring, `page ${i + 1}: focus on ${s.focus}, seen: ${s.ring}`);
      check(s.said.includes(`Page ${i + 1} of`), `page ${i + 1} is told as “${s.said}”`);
    }
    const kind = await page.evaluate(() =>
      [...new Set([...document.querySelectorAll(".page.here, .page.here *")].map((e) => `${e.tagName} ${e.className.baseVal ?? e.className} ${e.lang}`))]
        .filter((k) => !k.includes("from-back"))
        .sort()
        .join(),
    );
    if (!kinds.has(kind)) {
      kinds.add(kind);
      const found = await page.evaluate(() => window.axe.run({ resultTypes: ["violations"] }));
      for (const v of found.violations) faults.push(`page ${i + 1}: axe: ${v.id}: ${v.help}: ${v.nodes[0].html}`);
    }
    await page.keyboard.press("ArrowRight");
  }
  await where(last, "arrow right at the end");
  if (scheme === "light") await everyWay(page, last, size, where, check);
  await doneAndBack(page, check);
  await page.screenshot({ path: join(pictures, `phone-${name}-${size}-${scheme}.png`) });
  await page.close();
  report(faults, `${name}, ${size}, ${scheme}`);
  return last + 1;
}

// Back and forth by every other key, by buttons, by touch. Colours have no part in it.
async function everyWay(page, last, size, where, check) {
  await page.keyboard.press("ArrowLeft");
  await where(last - 1, "arrow left");
  await page.keyboard.press("Home");
  await where(0, "home");
  for (let presses = 0; (await state(page)).at < last && presses < 8 * (last + 1); presses++) {
    await page.keyboard.press("Space");
    await new Promise((r) => setTimeout(r, 30));
  }
  await where(last, "space");
  await page.keyboard.press("Home");
  await page.keyboard.press("End");
  await where(last, "end");

  // By the buttons; focus stays on the one that was pressed.
  await page.keyboard.press("Home");
  await page.focus(".next");
  for (let i = 1; i <= last; i++) {
    await page.keyboard.press("Enter");
    const s = await where(i, "button");
    check(s.focus === "BUTTON" && s.ring, "focus leaves the button or is not seen");
  }
  // By touch.
  if (size === "phone") {
    await page.tap(".back");
    await where(last - 1, "tap");
    await swipe(page, 1);
    await where(last - 2, "swipe to the right");
    for (let i = last - 1; i <= last; i++) {
      await swipe(page, -1);
      await where(i, "swipe to the left");
    }
  }
}

// Whether all comes to rest; the longest way takes a third of a second, on a busy machine longer.
const stills = (page) =>
  page.waitForFunction(() => document.getAnimations().length === 0, { timeout: 5000 }).then(
    () => true,
    () => false,
  );

async function swipe(page, way) {
  const y = 300, x = 180;
  await page.touchscreen.touchStart(x - way * 80, y);
  await page.touchscreen.touchMove(x, y + 4);
  await page.touchscreen.touchMove(x + way * 80, y + 8);
  await page.touchscreen.touchEnd();
}

// A step is done: its picture goes to the finished place. It is taken back: nothing is left there.
async function doneAndBack(page, check) {
  await page.keyboard.press("Home");
  const open = () => page.evaluate(() => [...document.querySelectorAll(".page.here .done")].length);
  for (let i = 0; i < 60 && !(await open()); i++) await page.keyboard.press("ArrowRight");
  const press = () => page.evaluate(() => document.querySelector(".page.here .done").click());
  check((await open()) > 0, "no step can be done");
  const words = () => page.evaluate(() => document.querySelector(".page.here .done").innerText);
  await press();
  let s = await state(page);
  check(s.gone === 1 && s.said.startsWith("Finished"), `done: ${s.gone} finished, told “${s.said}”`);
  check((await words()).includes("Take back"), "it is not said how it is taken back");
  check(await stills(page), "something goes on moving");
  await press();
  s = await state(page);
  check(s.gone === 0 && s.said.startsWith("Taken back"), `taken back: ${s.gone} finished, told “${s.said}”`);
  await press();
  await stills(page);
  const kept = await page.evaluate(() => [
    localStorage.length, sessionStorage.length, document.cookie.length, history.length, location.hash.length,
  ]);
  check(kept.join() === "0,0,0,2,0" || kept.join() === "0,0,0,1,0", `something is remembered: ${kept}`);
}

// Letters twice as large, as set in the browser; and with less motion, which is none.
async function large({ browser, name, file, pictures }) {
  for (const size of ["phone", "desk"]) {
    const faults = [];
    const page = await open({ browser, file, size, scheme: "light", still: true, letters: 32 }, faults);
    const set = await page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
    if (set !== "32px") faults.push(`letters are ${set}`);
    const { count } = await state(page);
    for (let i = 0; i < count; i++) {
      const s = await state(page);
      if (s.wide > 0) faults.push(`page ${i + 1} is wider than the screen by ${s.wide}`);
      if (s.moving > 0) faults.push(`page ${i + 1} moves`);
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll("h1,h2,p,button,.peg,.not")]
          .filter((e) => e.offsetParent && !e.closest(".live,.heard"))
          .filter((e) => e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== "inline")
          .map((e) => e.textContent),
      );
      if (cut.length) faults.push(`page ${i + 1}: cut: ${cut.join(" | ")}`);
      if (i === 1) await page.screenshot({ path: join(pictures, `phone-${name}-${size}-large.png`) });
      await page.keyboard.press("ArrowRight");
    }
    await page.close();
    report(faults, `${name}, ${size}, letters of 200 %`);
  }
}

async function withoutScript({ browser, name, file }) {
  const faults = [];
  const page = await open({ browser, file, size: "phone", scheme: "light", script: false }, faults);
  const html = readFileSync(file, "utf8");
  const count = html.split('<section class="page"').length - 1;
  const seen = await page.$$eval(".page", (all) => all.filter((p) => p.offsetHeight > 80).length);
  const buttons = await page.$$eval("button", (all) => all.filter((b) => b.offsetParent).length);
  const pictures = await page.$$eval(".page svg:not(.rope)", (all) => all.filter((b) => b.getBoundingClientRect().width < 40).length);
  const heard = await page.$$eval(".page p, .page h2", (all) => all.filter((e) => !e.offsetHeight).length);
  if (seen !== count) faults.push(`${seen} of ${count} pages are there`);
  if (buttons || pictures || heard) faults.push(`${buttons} dead buttons, ${pictures} pictures and ${heard} sentences not seen`);
  await page.close();
  report(faults, `${name}, without script`);
}

function report(faults, where) {
  if (!faults.length) return;
  console.error(`${where}:\n  ${[...new Set(faults)].slice(0, 20).join("\n  ")}`);
  throw new Error("a story for a telephone has faults");
}

if (what === "translate") {
  const club = JSON.parse(readFileSync(from, "utf8"));
  const people = club.club?.participants ?? club.participants;
  for (const [i, person] of people.entries()) {
    person.story = { ...person.story, second: { language: "ar", first: i % 2 === 1, texts: ARABIC } };
  }
  writeFileSync(to, JSON.stringify(club));
} else {
  await judge(from, to).catch((e) => {
    console.error(e.message);
    process.exitCode = 1;
  });
}
