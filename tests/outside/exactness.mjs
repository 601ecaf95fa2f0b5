// The engine's posterior against two general-purpose libraries of exact inference, exam by exam:
//   webppl 0.9.15 (npm, MIT)   a generative program over all joint hypotheses, by enumeration
//   bayesjs 0.6.5 (npm, MIT)   a Bayesian network, by junction tree
//   node exactness.mjs NETWORK_EXPORT KNOWLEDGE EXAMS CASES_DIRECTORY CASES
// bayesjs builds its cliques in time that rises with the square of the joint states and cannot hold all of them.
// It gets a few sites at a time, with everything else of the network as it is, and is compared with the engine's
// posterior given that the site is one of those; the sites change from exam to exam until each was asked.
import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { readdirSync } from "node:fs";
import { join } from "node:path";

const require = createRequire(import.meta.url);
function library(name) {
  try {
    return require(name);
  } catch (error) {
    console.error(`${name} cannot be loaded (${error.code}); packaging/deps --tests installs it`);
    process.exit(2);
  }
}
const bayesjs = library("bayesjs");
const webppl = library("webppl");

const tolerance = 1e-9;
const blocksForBayes = 8; // joint states of the network stay below 8 · 30

const [exporter, knowledge, exams, directory, cases] = process.argv.slice(2);
const files = readdirSync(directory)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .slice(0, Number(cases))
  .map((name) => join(directory, name));
const lines = execFileSync(exporter, [knowledge, exams, ...files], { maxBuffer: 2 ** 30 })
  .toString()
  .trimEnd()
  .split("\n")
  .map((line) => JSON.parse(line));
const [shared, ...all] = lines;
const [motors, sensories, irritables] = shared.levels;

/// P(values read | block, hidden levels) of one factor, by the classes the combinations belong to.
function rowOf(factor, rows, block, m, s, i) {
  const { depends, classes } = shared.factors[factor];
  let state = block;
  [[m, motors], [s, sensories], [i, irritables]].forEach(([level, count], k) => {
    if (depends[k]) state = state * count + level;
  });
  return rows[classes[state]];
}

const sum = (list) => list.reduce((a, b) => a + b, 0);
const normalized = (list) => list.map((p) => p / sum(list));
const range = (n) => [...Array(n).keys()];
const hiddenOf = (block, m, s, i) => shared.hidden[block][(m * sensories + s) * irritables + i];

// Marginals and conditionals of the hidden levels given the block, from their joint distribution.
const motorGiven = shared.blocks.map((_, b) =>
  range(motors).map((m) => sum(range(sensories).map((s) => hiddenOf(b, m, s, 0) + hiddenOf(b, m, s, 1)))));
const sensoryGiven = shared.blocks.map((_, b) =>
  range(motors).map((m) => {
    const row = range(sensories).map((s) => hiddenOf(b, m, s, 0) + hiddenOf(b, m, s, 1));
    return sum(row) > 0 ? normalized(row) : range(sensories).map(() => 1 / sensories); // a level that cannot be
  }));
const irritableGiven = shared.blocks.map((_, b) =>
  normalized(range(2).map((i) => sum(range(motors).flatMap((m) => range(sensories).map((s) => hiddenOf(b, m, s, i)))))));

// webppl ---------------------------------------------------------------------------------------------------------

const program = `
var model = function() {
  var block = sample(Categorical(exactness.block));
  var motor = sample(Categorical(exactness.motor[block]));
  var sensory = sample(Categorical(exactness.sensory[block][motor]));
  var irritable = sample(Categorical(exactness.irritable[block]));
  map(function(finding) {
    factor(Math.log(exactness.given(finding, block, motor, sensory, irritable)));
  }, exactness.read);
  return exactness.sites[block];
};
var answer = Infer({ method: 'enumerate', strategy: 'depthFirst', model: model });
map(function(site) { return Math.exp(answer.score(site)); }, exactness.names);
`;

/// Categorical over what can be at all.
function possible(probabilities) {
  const vs = range(probabilities.length).filter((v) => probabilities[v] > 0);
  return { vs, ps: vs.map((v) => probabilities[v]) };
}

const compiled = webppl.compile(program);
const fixed = {
  motor: motorGiven.map(possible),
  sensory: sensoryGiven.map((rows) => rows.map(possible)),
  irritable: irritableGiven.map(possible),
  sites: shared.blocks,
  names: range(shared.sites.length),
  given: (finding, block, m, s, i) => rowOf(finding.factor, finding.rows, block, m, s, i)[finding.value],
};

function byWebppl(exam) {
  globalThis.exactness = { ...fixed, block: possible(exam.blocks), read: exam.read };
  let answer;
  webppl.prepare(compiled, (_, value) => { answer = value; }, {}).run();
  return answer;
}

// bayesjs --------------------------------------------------------------------------------------------------------

function network(exam, blocks) {
  const net = {};
  const add = (id, states, parents, row) => {
    let whens = [{}];
    for (const parent of parents)
      whens = whens.flatMap((when) => net[parent].states.map((state) => ({ ...when, [parent]: state })));
    const then = (when) => Object.fromEntries(row(when).map((p, k) => [states[k], p]));
    net[id] = { id, states, parents, cpt: parents.length ? whens.map((when) => ({ when, then: then(when) })) : then({}) };
  };
  const names = (n) => range(n).map(String);
  const sites = [...new Set(blocks.map((b) => shared.blocks[b]))];
  add("block", blocks.map(String), [], () => normalized(blocks.map((b) => exam.blocks[b])));
  add("site", sites.map(String), ["block"], ({ block }) => sites.map((s) => (shared.blocks[block] === s ? 1 : 0)));
  add("motor", names(motors), ["block"], ({ block }) => motorGiven[block]);
  add("sensory", names(sensories), ["block", "motor"], ({ block, motor }) => sensoryGiven[block][motor]);
  add("irritable", names(irritables), ["block"], ({ block }) => irritableGiven[block]);
  exam.read.forEach(({ factor, rows }) => {
    const parents = ["block", ...["motor", "sensory", "irritable"].filter((_, k) => shared.factors[factor].depends[k])];
    add(`finding ${factor}`, names(rows[0].length), parents, ({ block, motor, sensory, irritable }) =>
      rowOf(factor, rows, Number(block), Number(motor ?? 0), Number(sensory ?? 0), Number(irritable ?? 0)));
  });
  return { net, sites };
}

/// A few sites: the next that were not asked yet, and the engine's first.
let turn = 0;
function someBlocks(exam) {
  const first = exam.posterior.indexOf(Math.max(...exam.posterior));
  const chosen = new Set([first]);
  const blocksOf = (sites) => range(shared.blocks.length).filter((b) => sites.has(shared.blocks[b]) && exam.blocks[b] > 0);
  for (let tries = 0; tries < shared.sites.length; ++tries) {
    const next = turn % shared.sites.length;
    if (chosen.size > 1 && blocksOf(new Set([...chosen, next])).length > blocksForBayes) break;
    chosen.add(next);
    ++turn;
  }
  return blocksOf(chosen);
}

function byBayes(exam) {
  const { net, sites } = network(exam, someBlocks(exam));
  const given = Object.fromEntries(exam.read.map(({ factor, value }) => [`finding ${factor}`, String(value)]));
  const expected = normalized(sites.map((s) => exam.posterior[s]));
  return sites.map((s, k) => [bayesjs.inferences.junctionTree.infer(net, { site: String(s) }, given), expected[k]]);
}

// ----------------------------------------------------------------------------------------------------------------

let failed = 0;
const check = (what, got, wanted) => {
  const difference = Math.abs(got - wanted);
  if (!(difference <= tolerance)) {
    ++failed;
    console.error(`${what}: ${got} instead of ${wanted}`);
  }
  return difference;
};
const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];

for (const exam of all)
  for (const { factor, rows } of exam.read)
    for (const row of rows) check(`${exam.name}: probabilities of factor ${factor} add to`, sum(row), 1);

function compare(library, exams, solve) {
  let worst = 0, answers = 0;
  const times = [];
  const milliseconds = () => process.cpuUsage().user / 1000; // of this process: the machine may be busy
  for (const exam of exams) {
    const start = milliseconds();
    const pairs = solve(exam);
    times.push(milliseconds() - start);
    answers += pairs.length;
    for (const [got, wanted] of pairs) worst = Math.max(worst, check(`${library}, ${exam.name}`, got, wanted));
  }
  const engine = median(exams.map((exam) => exam.microseconds));
  console.log(`${library}: ${exams.length} exams, ${answers} probabilities, largest difference ${worst.toExponential(1)}; ` +
    `median ${median(times).toFixed(0)} ms an exam, the engine ${(engine / 1000).toFixed(2)} ms`);
}

if (all.length < Number(exams)) throw new Error(`only ${all.length} exams`);
console.log(`${shared.sites.length} sites, ${shared.blocks.length} blocks, ` +
  `${shared.hidden.flat().filter((p) => p > 0).length} joint hypotheses`);
compare("webppl", all, (exam) => byWebppl(exam).map((p, s) => [p, exam.posterior[s]]));
compare("bayesjs", all, byBayes);
const asked = Math.min(turn, shared.sites.length);
console.log(`bayesjs was asked about ${asked} of ${shared.sites.length} sites besides the first of each exam`);
if (asked < shared.sites.length) ++failed;
console.log(failed === 0 ? "agree" : `${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
