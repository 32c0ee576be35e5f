import type { PageHand } from '../../hosts/page/browser.ts';

/** Milliseconds from the Enter key to the frame in which every result is on the screen. */
export async function editTime(hand: PageHand, text: string): Promise<number> {
  await hand.page.keyboard.type(text);
  await hand.page.evaluate(() => {
    const page = globalThis as unknown as { took: Promise<number> };
    page.took = new Promise((resolve) => {
      document.addEventListener(
        'keydown',
        () => {
          const began = performance.now();
          new MutationObserver((_changes, observer) => {
            if (document.documentElement.dataset.busy !== 'false') return;
            observer.disconnect();
            requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
          }).observe(document.documentElement, { attributes: true });
        },
        { capture: true, once: true },
      );
    });
  });
  await hand.page.keyboard.press('Shift+Enter');
  const took = await hand.page.evaluate(() => (globalThis as unknown as { took: Promise<number> }).took);
  await hand.settled();
  await hand.page.keyboard.press('ArrowDown');
  await hand.settled();
  return took;
}
