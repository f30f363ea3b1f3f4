'use strict';
// Draws each table of points as a curve, and tells the blend wherever somebody points or walks along it.
(() => {
  const PRINTED = { paper: '#fff', ink: '#000', soft: '#444', rule: '#ccc', money: '#0072b2', touch: '#d55e00' };
  const PRINTED_SIZE = { width: 470, height: 150 }; // shrunk by the style sheet
  const HEIGHT = 216;
  const WALK = 1000;
  // What the cost jumps to beside a number; the row next to it holds at the number itself.
  const ABOVE = 'just-above';
  const BELOW = 'just-below';

  const screenColours = () => {
    const style = getComputedStyle(document.documentElement);
    return Object.fromEntries(Object.keys(PRINTED).map(name => [name, style.getPropertyValue('--' + name).trim()]));
  };

  // The tables are what is shown, drawn and told; there is no other copy of the figures.
  const read = figure => {
    const names = [...figure.querySelectorAll('thead th')].slice(2).map(th => th.textContent.replace(/, %$/, ''));
    const rows = [...figure.querySelectorAll('tbody tr')]
      .map(tr => [...tr.querySelectorAll('[data-exact]')].map(cell => Number(cell.dataset.exact)));
    const kinds = [...figure.querySelectorAll('tbody tr')].map(tr => tr.dataset.kind);
    const at = rows.map(row => row[0]);
    // Both rows of a jump are one place, though each is rounded away from the other.
    kinds.forEach((kind, i) => { if (kind === ABOVE) at[i] = at[i - 1]; else if (kind === BELOW) at[i] = at[i + 1]; });
    const texts = [...figure.querySelectorAll('tbody th')].map(th => th.textContent.trim());
    return { names, at, kinds, texts, cost: rows.map(row => row[1]), shares: rows.map(row => row.slice(2)) };
  };

  // Whether the cost jumps between a row and the next, so that nothing lies between them.
  const jumps = (points, i) => points.kinds[i] === BELOW || points.kinds[i + 1] === ABOVE;

  // The rows of the jump nearest to a place, if it is near: the one that holds at the number, and those beside it.
  const jumpNear = (points, x, near) => {
    const holding = points.kinds.map((kind, i) => i)
      .filter(i => points.kinds[i + 1] === ABOVE || points.kinds[i - 1] === BELOW)
      .filter(i => Math.abs(points.at[i] - x) <= near)
      .sort((a, b) => Math.abs(points.at[a] - x) - Math.abs(points.at[b] - x));
    return holding.length === 0 ? null
      : { holds: holding[0], beside: [holding[0] - 1, holding[0] + 1].filter(i => points.kinds[i] === (i < holding[0] ? BELOW : ABOVE)) };
  };

  const blendAt = (points, steps, x, near) => {
    const jump = jumpNear(points, x, near);
    if (jump) return { jump, cost: points.cost[jump.holds], shares: points.shares[jump.holds] };
    const starts = points.at.map((place, i) => i).filter(i => i + 1 < points.at.length && !jumps(points, i));
    const i = starts.filter(k => points.at[k] <= x).pop() ?? starts[0];
    const part = Math.min(1, Math.max(0, (x - points.at[i]) / (points.at[i + 1] - points.at[i])));
    const between = (a, b) => a + (b - a) * part;
    return {
      jump,
      cost: between(points.cost[i], points.cost[i + 1]),
      shares: points.shares[i].map((share, k) => steps ? (part === 1 ? points.shares[i + 1][k] : share)
        : between(share, points.shares[i + 1][k])),
    };
  };

  const short = x => String(Number(x.toPrecision(4)));

  const curve = figure => {
    const points = read(figure);
    const { steps, now, unit, money } = figure.dataset;
    const first = points.at[0];
    const last = points.at[points.at.length - 1];
    const start = Math.min(last, Math.max(first, Number(now)));
    const pointing = (last - first) / 200; // a hand cannot point closer than that
    const exactly = (last - first) * 1e-9;
    const today = blendAt(points, steps === 'true', start, exactly);
    const box = figure.querySelector('.chart');
    const slider = figure.querySelector('input');
    const here = figure.querySelector('.here');
    const list = figure.querySelector('.shares');
    let colours = screenColours();

    // At a jump both costs are told: the one at the number itself, and what it jumps to beside it.
    const tell = (x, near = pointing) => {
      const blend = blendAt(points, steps === 'true', x, near);
      const { jump } = blend;
      const amount = cost => `${cost.toFixed(4)} ${money}`;
      const place = (text, cost) => `${text}${unit && " " + unit}: ${amount(cost)}`;
      const words = jump
        ? ['At ' + place(points.texts[jump.holds], blend.cost),
          ...jump.beside.map(i => place(points.texts[i], points.cost[i]))].join('; ')
        : 'At ' + place(short(x), blend.cost);
      here.textContent = words;
      slider.setAttribute('aria-valuetext', words);
      const present = points.names.map((name, k) => k).filter(k => blend.shares[k] > 0 || today.shares[k] > 0);
      list.replaceChildren(...present.map(k => {
        const item = document.createElement('li');
        const change = blend.shares[k] - today.shares[k];
        const cells = [points.names[k], blend.shares[k] === 0 ? 'none' : blend.shares[k].toFixed(2) + ' %',
          Math.abs(change) < 0.005 ? '' : (change > 0 ? '+' : '\u2212') + Math.abs(change).toFixed(2)];
        item.className = blend.shares[k] === 0 ? 'gone' : '';
        item.append(...cells.map((text, c) => {
          const cell = document.createElement(c === 0 ? 'div' : 'span');
          cell.textContent = text;
          return cell;
        }));
        return item;
      }));
    };

    const line = plot => {
      const { ctx, bbox } = plot;
      const x = Math.round(plot.valToPos(Number(now), 'x', true));
      ctx.save();
      ctx.strokeStyle = colours.touch;
      ctx.fillStyle = colours.ink;
      ctx.lineWidth = 1.5 * devicePixelRatio;
      ctx.setLineDash([5 * devicePixelRatio, 4 * devicePixelRatio]);
      ctx.beginPath();
      ctx.moveTo(x, bbox.top);
      ctx.lineTo(x, bbox.top + bbox.height);
      ctx.stroke();
      ctx.font = `${12 * devicePixelRatio}px system-ui, sans-serif`;
      ctx.textAlign = x > bbox.left + bbox.width - 40 * devicePixelRatio ? 'right' : 'left';
      ctx.fillText(ctx.textAlign === 'right' ? 'now ' : ' now', x, bbox.top + bbox.height - 6 * devicePixelRatio);
      ctx.restore();
    };

    // A dotted step over each jump; a ring where the curve ends without holding the number itself.
    const jump = plot => {
      const { ctx } = plot;
      const spot = i => [plot.valToPos(points.at[i], 'x', true), plot.valToPos(points.cost[i], 'y', true)];
      ctx.save();
      ctx.strokeStyle = colours.money;
      ctx.fillStyle = colours.paper;
      ctx.lineWidth = 1.5 * devicePixelRatio;
      points.at.map((at, i) => i).filter(i => i + 1 < points.at.length && jumps(points, i)).forEach(i => {
        ctx.setLineDash([2 * devicePixelRatio, 3 * devicePixelRatio]);
        ctx.beginPath();
        ctx.moveTo(...spot(i));
        ctx.lineTo(...spot(i + 1));
        ctx.stroke();
        ctx.setLineDash([]);
        ctx.beginPath();
        ctx.arc(...spot(points.kinds[i] === BELOW ? i : i + 1), 3.5 * devicePixelRatio, 0, 2 * Math.PI);
        ctx.fill();
        ctx.stroke();
      });
      ctx.restore();
    };

    const axis = (label, size, space) => ({
      label, size, space, labelSize: 18, gap: 4, font: '12px system-ui, sans-serif', labelFont: '12px system-ui, sans-serif',
      stroke: () => colours.soft, grid: { stroke: () => colours.rule, width: 1 }, ticks: { show: false },
    });

    // Each stretch between jumps is a line of its own, so that no slope is drawn across a jump.
    const stretches = [[]];
    points.at.forEach((at, i) => {
      stretches[stretches.length - 1].push(i);
      if (i + 1 < points.at.length && jumps(points, i)) stretches.push([]);
    });

    const plot = new uPlot({
      width: box.clientWidth || 320,
      height: HEIGHT,
      padding: [8, 14, 0, 0],
      legend: { show: false },
      cursor: { y: false, drag: { x: false, y: false }, points: { show: false } },
      scales: { x: { time: false, range: [first, last] } },
      axes: [axis(figure.dataset.axis, 30, 50), axis(figure.dataset.cost, 52, 26)],
      series: [{}, ...stretches.map(() => ({
        stroke: () => colours.money, width: 2.5,
        points: { show: true, size: 7, width: 2, stroke: () => colours.money, fill: () => colours.money },
      }))],
      hooks: {
        draw: [line, jump],
        setCursor: [u => {
          if (u.cursor.left < 0) return;
          const x = Math.min(last, Math.max(first, u.posToVal(u.cursor.left, 'x')));
          slider.value = String(Math.round((x - first) / (last - first) * WALK));
          tell(x);
        }],
      },
    }, [points.at, ...stretches.map(rows => points.cost.map((cost, i) => rows.includes(i) ? cost : null))], box);

    const walkTo = x => {
      slider.value = String(Math.round((x - first) / (last - first) * WALK));
      tell(x, exactly);
    };
    slider.addEventListener('input', () => {
      const x = first + (last - first) * Number(slider.value) / WALK;
      plot.setCursor({ left: plot.valToPos(x, 'x'), top: 10 }, false);
      tell(x);
    });
    box.addEventListener('mouseleave', () => walkTo(start));
    figure.querySelectorAll('[hidden]').forEach(part => { part.hidden = false; });
    walkTo(start);

    const fit = () => plot.setSize({ width: box.clientWidth, height: HEIGHT });
    const paint = palette => { colours = palette; plot.redraw(false, true); };
    new ResizeObserver(fit).observe(box);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => paint(screenColours()));
    addEventListener('beforeprint', () => { colours = PRINTED; plot.setSize(PRINTED_SIZE); });
    addEventListener('afterprint', () => { colours = screenColours(); fit(); });
  };

  // What scrolls sideways can be reached with the keyboard; what does not is passed over.
  const reach = () => document.querySelectorAll('.wide').forEach(box => {
    if (box.scrollWidth > box.clientWidth) box.tabIndex = 0; else box.removeAttribute('tabindex');
  });

  document.querySelectorAll('.curve').forEach(curve);
  document.querySelectorAll('details').forEach(fold => fold.addEventListener('toggle', reach));
  addEventListener('resize', reach);
  reach();
})();
