// A second opinion on a finished piece from manifold-3d, which is given the exported GLB and nothing else:
//   node glb.mjs FILE.glb
// Each line of stdin is a question: { "a": part, "b": part, "cap": mm, "turn": { "group": id, "axis": [x, y, z], "degrees": d } }.
// Each is answered on stdout with "VOLUME<tab>GAP": what the two parts share in mm3, and how far they stand apart in mm,
// `cap` where that is more. With `turn` all of the group is turned about the place of its node, in the axes of the file.
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import Module from 'manifold-3d';

const wasm = await Module();
wasm.setup();
const { Manifold, Mesh } = wasm;

const file = readFileSync(process.argv[2]);
const jsonBytes = file.readUInt32LE(12);
const gltf = JSON.parse(file.subarray(20, 20 + jsonBytes));
const binary = file.subarray(28 + jsonBytes);

const sizes = { 5123: 2, 5125: 4, 5126: 4 };
const widths = { SCALAR: 1, VEC3: 3 };
function numbers(index) {
  const { bufferView, byteOffset = 0, componentType, count, type } = gltf.accessors[index];
  const view = gltf.bufferViews[bufferView];
  const size = sizes[componentType];
  const stride = view.byteStride ?? size * widths[type];
  const start = (view.byteOffset ?? 0) + byteOffset;
  const all = [];
  for (let row = 0; row < count; row++) {
    for (let column = 0; column < widths[type]; column++) {
      const at = start + row * stride + column * size;
      all.push(componentType === 5126 ? binary.readFloatLE(at) : size === 2 ? binary.readUInt16LE(at) : binary.readUInt32LE(at));
    }
  }
  return all;
}

// Matrices in columns, as glTF has them.
const times = (a, b) =>
  Array.from({ length: 16 }, (_, i) => [0, 1, 2, 3].reduce((sum, k) => sum + a[(i % 4) + 4 * k] * b[k + 4 * (i >> 2)], 0));
const unit = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];
function turning({ axis, degrees }) {
  const [x, y, z] = axis;
  const angle = (degrees * Math.PI) / 180;
  const [c, s, t] = [Math.cos(angle), Math.sin(angle), 1 - Math.cos(angle)];
  return [
    t * x * x + c, t * x * y + s * z, t * x * z - s * y, 0,
    t * x * y - s * z, t * y * y + c, t * y * z + s * x, 0,
    t * x * z + s * y, t * y * z - s * x, t * z * z + c, 0,
    0, 0, 0, 1,
  ];
}
function local({ matrix, translation = [0, 0, 0], rotation = [0, 0, 0, 1], scale = [1, 1, 1] }) {
  if (matrix) return matrix;
  const [x, y, z, w] = rotation;
  const turn = [
    1 - 2 * (y * y + z * z), 2 * (x * y + z * w), 2 * (x * z - y * w), 0,
    2 * (x * y - z * w), 1 - 2 * (x * x + z * z), 2 * (y * z + x * w), 0,
    2 * (x * z + y * w), 2 * (y * z - x * w), 1 - 2 * (x * x + y * y), 0,
    0, 0, 0, 1,
  ];
  const move = [...unit.slice(0, 12), ...translation, 1];
  return times(times(move, turn), [scale[0], 0, 0, 0, 0, scale[1], 0, 0, 0, 0, scale[2], 0, 0, 0, 0, 1]);
}

const parents = new Map();
gltf.nodes.forEach((node, parent) => (node.children ?? []).forEach((child) => parents.set(child, parent)));
const parts = new Map(gltf.nodes.flatMap((node, i) => (node.extras?.part ? [[node.extras.part, i]] : [])));

const meshes = new Map();
function mesh(index) {
  if (!meshes.has(index)) {
    const [{ attributes, indices }] = gltf.meshes[index].primitives;
    const at = numbers(attributes.POSITION);
    // Corners are written once for each face that has them: those at one place are one.
    const places = new Map();
    const corners = [];
    const same = [];
    for (let i = 0; i < at.length; i += 3) {
      const key = `${at[i]} ${at[i + 1]} ${at[i + 2]}`;
      if (!places.has(key)) {
        places.set(key, corners.length / 3);
        corners.push(at[i], at[i + 1], at[i + 2]);
      }
      same.push(places.get(key));
    }
    const triangles = numbers(indices).map((i) => same[i]);
    meshes.set(
      index,
      new Manifold(
        new Mesh({ numProp: 3, vertProperties: new Float32Array(corners), triVerts: new Uint32Array(triangles) }),
      ),
    );
  }
  return meshes.get(index);
}

function solid(part, turn) {
  const node = parts.get(part);
  let world = unit;
  for (let at = node; at !== undefined; at = parents.get(at)) {
    if (turn && gltf.nodes[at].extras?.group === turn.group) world = times(turning(turn), world);
    world = times(local(gltf.nodes[at]), world);
  }
  const mm = world.map((x, i) => (i % 4 === 3 ? x : x * 1000));
  return mesh(gltf.nodes[node].mesh).transform(mm);
}

for await (const line of createInterface({ input: process.stdin })) {
  const { a, b, cap, turn } = JSON.parse(line);
  const [first, second] = [solid(a, turn), solid(b, turn)];
  const shared = first.intersect(second);
  process.stdout.write(`${shared.volume()}\t${first.minGap(second, cap)}\n`);
  for (const one of [shared, first, second]) one.delete();
}
