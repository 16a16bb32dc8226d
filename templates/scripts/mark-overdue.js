// The pages are built without a clock, so what is late is found out when they are read.
const now = new Date();
const two = (number) => String(number).padStart(2, '0');
const today = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
for (const next of document.querySelectorAll('time[data-overdue]')) {
  if (next.dateTime >= today) continue;
  const word = document.createElement('strong');
  word.textContent = ` ${next.dataset.overdue}`;
  next.after(word);
}
