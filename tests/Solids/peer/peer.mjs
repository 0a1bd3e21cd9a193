// A second opinion from manifold-3d. Reads one command a line on stdin, answers on stdout:
//   load FILE     reads a workload file                -> "loaded N"
//   build         builds all boards once               -> "built MILLISECONDS"
//   pairs FILE    overlap and gap of the pairs listed  -> "paired MILLISECONDS"
//   part          rows "id volume area triangles genus shells" of the last build, then "end"; the genus is that of all
//                 shells together, 1 - (corners - sides + triangles) / 2
//   memory        the most memory this process ever held  -> "held BYTES"
//   pair          rows "id id volume gap" of the last pairs, then "end"
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import Module from 'manifold-3d';

const wasm = await Module();
wasm.setup();
const { Manifold } = wasm;

const matrix = ({ o, u, v, w }) => [...u, 0, ...v, 0, ...w, 0, ...o, 1];

function cutter(cut) {
  if (cut.k === 'box') {
    const size = cut.max.map((x, i) => x - cut.min[i]);
    const cube = Manifold.cube(size, false);
    const moved = cube.translate(cut.min);
    cube.delete();
    return moved;
  }
  const outline =
    cut.k === 'prism'
      ? cut.poly
      : Array.from({ length: cut.n }, (_, i) => {
          const angle = (2 * Math.PI * i) / cut.n;
          return [cut.r * Math.cos(angle), cut.r * Math.sin(angle)];
        });
  const prism = Manifold.extrude(outline, cut.h);
  const moved = prism.transform(matrix(cut));
  prism.delete();
  return moved;
}

function build(board) {
  const blank = Manifold.cube(board.size, false);
  if (board.cuts.length === 0) return blank;
  const all = [blank, ...board.cuts.map(cutter)];
  const solid = Manifold.difference(all);
  solid.numTri(); // evaluation is lazy
  for (const one of all) one.delete();
  return solid;
}

function shells(solid) {
  const parts = solid.decompose();
  for (const part of parts) part.delete();
  return parts.length;
}

let boards = [];
let solids = [];
let pairs = [];
let measured = [];
const say = (line) => process.stdout.write(line + '\n');

for await (const line of createInterface({ input: process.stdin })) {
  const [command, ...rest] = line.trim().split(' ');
  const file = rest.join(' ');
  if (command === 'load') {
    boards = JSON.parse(readFileSync(file, 'utf8')).boards;
    say(`loaded ${boards.length}`);
  } else if (command === 'build') {
    for (const solid of solids) solid.delete();
    const start = performance.now();
    solids = boards.map(build);
    for (const solid of solids) solid.getMesh();
    say(`built ${performance.now() - start}`);
  } else if (command === 'part') {
    const rows = solids.map((s, i) =>
      [boards[i].id, s.volume(), s.surfaceArea(), s.numTri(), s.genus(), shells(s)].join('\t'),
    );
    say(rows.concat('end').join('\n'));
  } else if (command === 'pairs') {
    pairs = readFileSync(file, 'utf8').trim().split('\n').map((row) => row.split('\t').slice(0, 2));
    const placed = new Map(boards.map((board, i) => [board.id, solids[i].transform(matrix(board))]));
    const start = performance.now();
    measured = pairs.map(([a, b]) => {
      const common = Manifold.intersection([placed.get(a), placed.get(b)]);
      const volume = common.volume();
      common.delete();
      return [volume, placed.get(a).minGap(placed.get(b), 2)];
    });
    say(`paired ${performance.now() - start}`);
    for (const solid of placed.values()) solid.delete();
  } else if (command === 'memory') {
    say(`held ${process.resourceUsage().maxRSS * 1024}`);
  } else if (command === 'pair') {
    say(pairs.map(([a, b], i) => `${a}\t${b}\t${measured[i][0]}\t${measured[i][1]}`).concat('end').join('\n'));
  }
}
