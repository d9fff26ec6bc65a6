/** Brings what was changed into view. */

/** Scrolls only where nothing of it is seen, so that a reader who looks at it is not moved. */
export function show(section: HTMLElement | null): void {
  if (!section) return;
  const { top, bottom } = section.getBoundingClientRect();
  if (bottom > 0 && top < window.innerHeight) return;
  section.scrollIntoView({ block: "start" });
}
