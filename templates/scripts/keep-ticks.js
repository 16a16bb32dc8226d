// Boxes ticked on a phone stay ticked on that phone. A box is known by its page and its own words,
// so that a tick does not move to another line when a revision changes the list.
try {
  const seen = new Map();
  for (const box of document.querySelectorAll('input[type="checkbox"]')) {
    const words = box.getAttribute('aria-label') ?? box.closest('label').textContent.trim();
    const part = box.closest('section')?.querySelector('h1, h2, h3, h4')?.textContent ?? '';
    const count = (seen.get(part + words) ?? 0) + 1;
    seen.set(part + words, count);
    const key = ['tick', location.pathname, part, words, count].join('|');
    box.checked = localStorage.getItem(key) === 'yes';
    box.addEventListener('change', () => {
      if (box.checked) localStorage.setItem(key, 'yes');
      else localStorage.removeItem(key);
    });
  }
} catch {
  // A browser that keeps nothing for local files still shows the boxes.
}
