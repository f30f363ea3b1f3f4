'use strict';
// Draws each table of points as a curve, and tells the blend wherever somebody points or walks along it.
(() => {
  const PRINTED = { ink: '#000', soft: '#444', rule: '#ccc', money: '#0072b2', touch: '#d55e00' };
  const PRINTED_SIZE = { width: 470, height: 150 }; // shrunk by the style sheet
  const HEIGHT = 216;
  const WALK = 1000;

  const screenColours = () => {
    const style = getComputedStyle(document.documentElement);
    return Object.fromEntries(Object.keys(PRINTED).map(name => [name, style.getPropertyValue('--' + name).trim()]));
  };

  // The tables are what is shown, drawn and told; there is no other copy of the figures.
  const read = figure => {
    const names = [...figure.querySelectorAll('thead th')].slice(2).map(th => th.textContent.replace(/, %$/, ''));
    const rows = [...figure.querySelectorAll('tbody tr')]
      .map(tr => [...tr.querySelectorAll('[data-exact]')].map(cell => Number(cell.dataset.exact)));
    return { names, at: rows.map(row => row[0]), cost: rows.map(row => row[1]), shares: rows.map(row => row.slice(2)) };
  };

  const blendAt = (points, steps, x) => {
    let i = 0;
    while (i < points.at.length - 2 && x >= points.at[i + 1]) i++;
    const part = Math.min(1, Math.max(0, (x - points.at[i]) / (points.at[i + 1] - points.at[i])));
    const between = (a, b) => a + (b - a) * part;
    return {
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
    const today = blendAt(points, steps === 'true', start);
    const box = figure.querySelector('.chart');
    const slider = figure.querySelector('input');
    const here = figure.querySelector('.here');
    const list = figure.querySelector('.shares');
    let colours = screenColours();

    const tell = x => {
      const blend = blendAt(points, steps === 'true', x);
      const words = `At ${short(x)}${unit && " " + unit}: ${blend.cost.toFixed(4)} ${money}`;
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

    const axis = (label, size, space) => ({
      label, size, space, labelSize: 18, gap: 4, font: '12px system-ui, sans-serif', labelFont: '12px system-ui, sans-serif',
      stroke: () => colours.soft, grid: { stroke: () => colours.rule, width: 1 }, ticks: { show: false },
    });

    const plot = new uPlot({
      width: box.clientWidth || 320,
      height: HEIGHT,
      padding: [8, 14, 0, 0],
      legend: { show: false },
      cursor: { y: false, drag: { x: false, y: false }, points: { show: false } },
      scales: { x: { time: false, range: [first, last] } },
      axes: [axis(figure.dataset.axis, 30, 50), axis(figure.dataset.cost, 52, 26)],
      series: [{}, {
        stroke: () => colours.money, width: 2.5,
        points: { show: true, size: 7, width: 2, stroke: () => colours.money, fill: () => colours.money },
      }],
      hooks: {
        draw: [line],
        setCursor: [u => {
          if (u.cursor.left < 0) return;
          const x = Math.min(last, Math.max(first, u.posToVal(u.cursor.left, 'x')));
          slider.value = String(Math.round((x - first) / (last - first) * WALK));
          tell(x);
        }],
      },
    }, [points.at, points.cost], box);

    const walkTo = x => {
      slider.value = String(Math.round((x - first) / (last - first) * WALK));
      tell(x);
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
