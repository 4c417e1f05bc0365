(() => {
  "use strict";
  const root = document.documentElement;
  root.classList.add("js");

  function start() {
    const one = (what) => document.querySelector(what);
    const pages = [...document.querySelectorAll(".page")];
    const line = one("header .line"), beads = one(".beads"), main = one("main");
    const hold = one(".hold"), nav = one("nav"), back = one(".back"), next = one(".next"), count = one(".count");
    const live = one(".live"), row = one(".finished ul");
    let at = 0;

    const say = (words) => { live.textContent = words; };

    // The rope: a bead for each page, the peg where this one is; with very many, the peg alone.
    function rope() {
      const last = Math.max(1, pages.length - 1);
      beads.replaceChildren(...pages.map((_, i) => {
        const bead = document.createElement(i === at ? "b" : "i");
        bead.style.left = `${100 * i / last}%`;
        if (i === at) bead.textContent = i + 1;
        else if (i < at) bead.className = "past";
        return bead;
      }));
      const letter = parseFloat(getComputedStyle(root).fontSize);
      line.classList.toggle("many", beads.clientWidth / last < letter * 0.95);
    }

    // Shows a page. Focus stays on the button that was pressed; from elsewhere it goes to the heading.
    function show(to, aloud) {
      to = Math.max(0, Math.min(pages.length - 1, to));
      const page = pages[to], old = at;
      if (aloud && to === old) return;
      at = to;
      pages.forEach((p, i) => {
        p.classList.toggle("here", i === at);
        p.classList.toggle("from-back", i === at && at < old);
      });
      rope();
      count.textContent = page.dataset.count;
      back.setAttribute("aria-disabled", String(at === 0));
      next.setAttribute("aria-disabled", String(at === pages.length - 1));
      if (!aloud) return;
      scrollTo(0, 0);
      const heading = page.querySelector("h2");
      if (nav.contains(document.activeElement)) {
        say(`${page.dataset.page}: ${heading.textContent}`);
      } else {
        say(page.dataset.page);
        heading.focus({ preventScroll: true });
      }
    }

    const go = (by) => show(at + by, true);
    back.addEventListener("click", () => go(-1));
    next.addEventListener("click", () => go(1));

    document.addEventListener("keydown", (e) => {
      if (e.altKey || e.ctrlKey || e.metaKey) return;
      const button = e.target.closest && e.target.closest("button");
      const left = root.scrollHeight - scrollY - innerHeight;
      switch (e.key) {
        case "ArrowRight": go(1); break;
        case "ArrowLeft": go(-1); break;
        case "Home": show(0, true); break;
        case "End": show(pages.length - 1, true); break;
        case " ":
          // A button is pressed by it, and what is not yet seen is scrolled to first.
          if (button || (e.shiftKey ? scrollY > 8 : left > 8)) return;
          go(e.shiftKey ? -1 : 1);
          break;
        default: return;
      }
      e.preventDefault();
    });

    // A swipe with one finger, clearly sideways; not while the page is zoomed, where it moves the view.
    let from = null;
    const zoomed = () => window.visualViewport && visualViewport.scale > 1.05;
    main.addEventListener("touchstart", (e) => {
      const t = e.touches[0];
      from = e.touches.length === 1 && !zoomed() ? { x: t.clientX, y: t.clientY } : null;
    }, { passive: true });
    main.addEventListener("touchend", (e) => {
      if (!from) return;
      const t = e.changedTouches[0], x = t.clientX - from.x, y = t.clientY - from.y;
      from = null;
      if (Math.abs(x) > 48 && Math.abs(x) > 1.5 * Math.abs(y)) go(x < 0 ? 1 : -1);
    }, { passive: true });
    main.addEventListener("touchcancel", () => { from = null; }, { passive: true });

    // Done: the picture goes to the finished place, and back from there.
    const still = matchMedia("(prefers-reduced-motion: reduce)");
    function fly(tile, a, b) {
      if (still.matches || !a.width || !b.width) return;
      const ghost = tile.cloneNode(true);
      ghost.classList.add("flying");
      ghost.setAttribute("aria-hidden", "true");
      Object.assign(ghost.style, { left: `${a.x}px`, top: `${a.y}px`, width: `${a.width}px`, height: `${a.height}px` });
      document.body.append(ghost);
      const to = `translate(${b.x - a.x}px, ${b.y - a.y}px) scale(${b.width / a.width})`;
      const flight = ghost.animate([{ transform: "none" }, { transform: to }], { duration: 350, easing: "ease-in-out" });
      flight.finished.finally(() => ghost.remove());
    }

    function toggle(step) {
      const all = [...document.querySelectorAll(`[data-step="${step}"]`)];
      const seen = all.find((h) => h.offsetParent) || all[0];
      const tile = seen.querySelector(".tile"), name = seen.dataset.name;
      const mine = row.querySelector(`[data-of="${step}"]`);
      if (mine) {
        const a = mine.getBoundingClientRect();
        all.forEach((h) => h.classList.remove("gone"));
        fly(mine.querySelector(".tile"), a, tile.getBoundingClientRect());
        mine.remove();
        say(`${live.dataset.back}: ${name}`);
        return;
      }
      const item = document.createElement("li"), small = document.createElement("div");
      const picture = tile.querySelector("svg").cloneNode(true);
      item.dataset.of = step;
      small.className = "tile";
      picture.setAttribute("role", "img");
      picture.setAttribute("aria-label", name);
      small.append(picture);
      item.append(small);
      row.append(item);
      fly(tile, tile.getBoundingClientRect(), small.getBoundingClientRect());
      all.forEach((h) => h.classList.add("gone"));
      say(`${live.dataset.finished}: ${name}`);
    }

    document.querySelectorAll(".done").forEach((button) => {
      button.hidden = false;
      const holder = button.closest("[data-step]");
      holder.querySelector(".tile").dataset.gone = holder.dataset.gone;
      button.addEventListener("click", () => toggle(holder.dataset.step));
    });
    line.hidden = hold.hidden = false;
    root.classList.add("ready");
    show(0, false);
    addEventListener("resize", rope);
  }

  document.addEventListener("DOMContentLoaded", () => {
    try {
      start();
    } catch {
      // Whatever went wrong: the whole story is still there to read.
      root.classList.remove("js", "ready");
    }
  });
})();
