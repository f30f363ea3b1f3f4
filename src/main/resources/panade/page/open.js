'use strict';
// Asks the program whenever a field is left changed, and puts what it answers where it belongs. The fields hold the
// only copy of what is changed; what was worked out comes from the program as a page and is taken over as it is.
(() => {
  const PATIENCE = 120000;
  const fields = [...document.querySelectorAll('main input[name]')];
  const byName = new Map(fields.map(field => [field.name, field]));
  const undo = document.getElementById('undo');
  const redo = document.getElementById('redo');
  const start = document.getElementById('start');
  const trouble = document.getElementById('trouble');
  const main = document.querySelector('main');
  const past = [''];
  let now = 0;
  let asking = false;
  let waiting = false;

  // A field says something where it differs from the start: a text its text, a box that it is not ticked.
  const saying = field => field.type === 'checkbox' ? (field.checked ? null : 'out')
    : field.value.trim() === field.dataset.start ? null : field.value.trim();

  const form = () => {
    const said = new URLSearchParams();
    fields.forEach(field => {
      const words = saying(field);
      if (words !== null) said.set(field.name, words);
    });
    return said.toString();
  };

  const mark = () => {
    fields.filter(field => field.type === 'text').forEach(field => {
      const changed = saying(field) !== null;
      field.classList.toggle('changed', changed);
      document.getElementById(field.name + '-was').textContent =
        changed ? (field.dataset.start ? 'was ' + field.dataset.start : 'was empty') : '';
    });
    undo.disabled = now === 0;
    redo.disabled = now === past.length - 1;
    start.disabled = form() === '';
  };

  const put = state => {
    const said = new URLSearchParams(state);
    fields.forEach(field => {
      if (field.type === 'checkbox') field.checked = !said.has(field.name);
      else field.value = said.has(field.name) ? said.get(field.name) : field.dataset.start;
    });
  };

  const tellFaults = page => {
    const told = new Map([...page.querySelectorAll('[data-field]')].map(each => [each.dataset.field, each.textContent]));
    fields.filter(field => field.type === 'text').forEach(field => {
      const words = told.get(field.name) ?? '';
      document.getElementById(field.name + '-fault').textContent = words;
      if (words) field.setAttribute('aria-invalid', 'true'); else field.removeAttribute('aria-invalid');
    });
    trouble.textContent = [...page.querySelectorAll('pre.trouble')].map(each => each.textContent).join('\n');
    if (told.size > 0) {
      document.getElementById('said').textContent =
        'Not worked out: ' + [...told].map(([name, words]) => byName.get(name).getAttribute('aria-label') + ': ' + words).join(' ');
    }
  };

  const takeOver = page => {
    page.querySelectorAll('[data-live]').forEach(fresh => {
      const old = document.querySelector(`[data-live="${CSS.escape(fresh.dataset.live)}"]`);
      if (old && old.innerHTML !== fresh.innerHTML) old.replaceChildren(...[...fresh.childNodes].map(node => document.importNode(node, true)));
    });
    document.getElementById('answer').className = page.getElementById('answer').className;
  };

  const answered = request => {
    const page = request.response;
    main.classList.remove('stale');
    if (request.status === 200 && page && page.getElementById('answer')) {
      takeOver(page);
      tellFaults(page);
    } else if (request.status === 200 && page && page.body.classList.contains('faulty')) {
      main.classList.add('stale');
      tellFaults(page);
    } else {
      main.classList.add('stale');
      trouble.textContent = request.status === 409
        ? 'A document was changed on disk since this page was opened. Load the page again to begin from what it says now.'
        : `Not worked out: the program answered ${request.status}. The terminal it runs in may say more.`;
    }
  };

  const silent = () => {
    main.classList.add('stale');
    trouble.textContent = 'The program does not answer: it has ended, or was idle for too long. What is typed here stays; '
      + 'start "panade open" again and type it there.';
  };

  // One question at a time; what changes meanwhile is asked next.
  const ask = () => {
    if (asking) {
      waiting = true;
      return;
    }
    asking = true;
    main.setAttribute('aria-busy', 'true');
    const request = new XMLHttpRequest();
    request.open('POST', 'answer');
    request.responseType = 'document';
    request.timeout = PATIENCE;
    request.setRequestHeader('Content-Type', 'application/x-www-form-urlencoded');
    request.onload = () => answered(request);
    request.onerror = silent;
    request.ontimeout = silent;
    request.onloadend = () => {
      asking = false;
      if (waiting) {
        waiting = false;
        ask();
      } else {
        main.removeAttribute('aria-busy');
      }
    };
    const said = form();
    request.send((said ? said + '&' : '') + 'version=' + encodeURIComponent(document.body.dataset.version));
  };

  const changed = () => {
    const state = form();
    if (state !== past[now]) {
      past.splice(now + 1, past.length, state);
      now = past.length - 1;
      ask();
    }
    mark();
  };

  const go = to => {
    if (to < 0 || to >= past.length) return;
    now = to;
    put(past[now]);
    mark();
    ask();
  };

  // Saving over a file is asked for twice, with nothing else in between.
  const save = document.getElementById('save');
  const saved = document.getElementById('saved');
  const name = document.getElementById('save-as');
  let doubted = '';
  save.addEventListener('submit', event => {
    event.preventDefault();
    const question = form() + '\n' + name.value;
    const said = new URLSearchParams(form());
    said.set('version', document.body.dataset.version);
    said.set('name', name.value);
    if (question === doubted) said.set('over', 'yes');
    doubted = '';
    saved.textContent = '';
    const request = new XMLHttpRequest();
    request.open('POST', 'save');
    request.setRequestHeader('Content-Type', 'application/x-www-form-urlencoded');
    request.onload = () => {
      if (request.status === 412) doubted = question;
      saved.textContent = request.responseText.trim();
      saved.classList.toggle('trouble', request.status !== 200);
    };
    request.onerror = silent;
    request.send(said.toString());
  });

  document.querySelector('main').addEventListener('change', event => { if (event.target.name) changed(); });
  document.querySelector('main').addEventListener('click', event => {
    const button = event.target.closest('button[data-form]');
    if (!button) return;
    new URLSearchParams(button.dataset.form).forEach((text, name) => { byName.get(name).value = text; });
    document.getElementById('answer').focus();
    changed();
  });
  document.addEventListener('keydown', event => {
    if (event.key === 'Enter' && event.target.matches('input[name][type="text"]')) {
      changed();
      return;
    }
    const own = event.target.matches('input[type="text"]')
      && event.target.value !== (event.target.dataset.held ?? event.target.defaultValue);
    if (own || !(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key === 'z' && !event.shiftKey) {
      event.preventDefault();
      go(now - 1);
    } else if (key === 'y' || (key === 'z' && event.shiftKey)) {
      event.preventDefault();
      go(now + 1);
    }
  });
  // While a field is being typed into, undo is the field's own.
  document.addEventListener('focusin', event => { if (event.target.matches('input[type="text"]')) event.target.dataset.held = event.target.value; });
  document.addEventListener('change', event => { if (event.target.matches('input[type="text"]')) event.target.dataset.held = event.target.value; });
  undo.addEventListener('click', () => go(now - 1));
  redo.addEventListener('click', () => go(now + 1));
  start.addEventListener('click', () => {
    put('');
    changed();
  });
  // A browser may put back what was typed before the page was loaded again.
  put('');
  mark();
})();
