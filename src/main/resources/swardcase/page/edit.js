// Tables, keys and a new farm: cells, paste, tallies; check first, save when told to.
import { $, ask, main, show } from './page.js';

const all = selector => [...main.querySelectorAll(selector)];
function clear(row) {
  row.dataset.line = 0;
  row.querySelectorAll('.fault').forEach(one => one.remove());
  for (const input of row.querySelectorAll('input')) { input.value = ''; input.removeAttribute('aria-invalid'); }
  return row;
}
const addRow = table => $('tbody', table).appendChild(clear($('tbody', table).lastElementChild.cloneNode(true)));
function gathered(save) {
  const values = name => Object.fromEntries(all(`[data-${name}]`).map(input => [input.dataset[name], input.value]));
  const rows = table => [...table.querySelectorAll('tbody tr')].map(row => (
    { line: Number(row.dataset.line), cells: [...row.querySelectorAll('input')].map(input => input.value) }));
  const question = { save, print: $('[data-print]', main).dataset.print };
  if ($('[data-begin]', main)) question.answers = values('answer');
  if ($('[data-key]', main)) question.keys = values('key');
  if ($('[data-table]', main)) question.tables = Object.fromEntries(all('[data-table]').map(table => [table.dataset.table, rows(table)]));
  return question;
}
/** A fault beside its cell where it has one, and in the list of all. */
function tell(faults) {
  const add = (tag, text, more) => Object.assign(document.createElement(tag), { textContent: text, ...more });
  const list = add('ul', '');
  for (const fault of faults) {
    list.append(add('li', fault.says));
    const row = all(`[data-table="${fault.table}"] tbody tr`)[fault.row ?? -1];
    const input = row && ($(`[data-column="${fault.column}"]`, row) || $('input', row));
    input?.setAttribute('aria-invalid', 'true');
    input?.after(add('span', fault.says.replace(/^[^:]*:\d+: /, ''), { className: 'fault' }));
  }
  $('#told').replaceChildren(list);
}
async function send(save) {
  all('.fault').forEach(one => one.remove());
  all('[aria-invalid]').forEach(one => one.removeAttribute('aria-invalid'));
  const answer = await ask('/edit', gathered(save));
  const told = answer.text.startsWith('{') ? JSON.parse(answer.text) : { told: answer.text };
  if (told.saved && $('[data-begin]', main)) { history.replaceState(null, '', '#paddocks'); return location.reload(); }
   if (told.saved) await show({}, false);
  if (told.faults) tell(told.faults);
  else if ($('#told')) $('#told').innerHTML = told.told;
  $('#told')?.focus();
}
main.addEventListener('click', event => {
  const on = selector => event.target.closest(selector);
  if (on('[data-tally]')) { const input = $('input', on('td')); input.value = Number(input.value || 0) + 1; }
  else if (on('[data-add]')) $('input', addRow(on('[data-table]'))).focus();
  else if (on('[data-remove]')) { if (on('tbody').children.length > 1) on('tr').remove(); else clear(on('tr')); }
  else if (on('[data-check]')) send(false);
  else if (on('[data-save]')) send(true);
});
main.addEventListener('change', event => {
  if (event.target.dataset.answer) show(gathered(false), false);
});
main.addEventListener('paste', event => {
  const cell = event.target.closest('[data-table] td');
  const rows = event.clipboardData.getData('text').replace(/\r/g, '').replace(/\n$/, '').split('\n').map(line => line.split('\t'));
  if (!cell || rows.length * rows[0].length < 2) return;
  event.preventDefault();
  let row = cell.parentElement;
  rows.forEach((cells, at) => {
    if (at > 0) row = row.nextElementSibling || addRow(cell.closest('[data-table]'));
    cells.forEach((text, k) => { const input = row.children[cell.cellIndex + k]?.querySelector('input'); if (input) input.value = text.trim(); });
  });
});
