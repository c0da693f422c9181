// What the fields of the form are called. A key that is not here is called as in the file. Help comes from the engine, in the words of the schema.

/** By the section and the key. @type {Record<string, string>} */
const labels = {
  'holding.name': 'What is the place called?',
  'holding.keeper': 'Your name',
  'holding.find': 'Where things are kept',
  'holding.signal': 'Where a telephone works',
  'holding.sick-pen': 'Where a ewe that is unwell goes',
  'holding.contacts': 'Who to ring',
  'holding.contacts[].role': 'Who is it?',
  'season.tup-in': 'The day he goes in, or went in',
  'season.lambing-from': 'The day the first lambs are wanted',
  'season.tup-out': 'The day he comes out',
  'season.gestation-days': 'Days in lamb',
  groups: 'Groups, one for each tup',
  'groups[].name': 'What is the group called?',
  'groups[].tup': 'What is the tup called?',
  'groups[].tups': 'One tup took over from another?',
  'groups[].tups[].in': 'The day he goes in',
  'groups[].tups[].out': 'The day he comes out',
  'groups[].mating': 'How they are served',
  'groups[].date': 'The one day',
  'groups[].tup-in': 'The day he goes in',
  'groups[].tup-out': 'The day he comes out',
  'groups[].raddle': 'Raddle colours, in order',
  'fields.singles': 'Ewes with one lamb',
  'fields.twins': 'Ewes with two',
  'fields.triplets': 'Ewes with three or more',
  'fields.not-in-lamb': 'Ewes not in lamb',
  'fields.with-lambs': 'Ewes with their lambs',
  breeds: 'Breeds with figures of their own',
  'keeper-days.free': 'Days you have hours to spare',
  'keeper-days.away': 'When you are away',
  'keeper-days.away[].from': 'First day away',
  'keeper-days.away[].to': 'Last day away',
  'keeper-days.away[].sitter': 'Who minds them?',
  jobs: 'Jobs of your own',
  'jobs[].title': 'What is to be done?',
  'jobs[].on': 'On the day',
  'jobs[].before': 'Or days before',
  'jobs[].after': 'Or days after',
  'jobs[].days': 'How many days',
  'feeds.method': 'How is the ration worked?',
  'feeds.forage': 'Forage',
  'feeds.forage.kind': 'What do they live on in winter?',
  'feeds.concentrate': 'Nuts or other concentrate',
  'feeds.concentrate.name': 'What does it say on the bag?',
  'feeds.concentrate.scoop': 'Your scoop holds',
  'feeds.concentrate.bag': 'A bag holds',
  'feeds.forage.bale': 'A bale weighs',
  'feeds.per-lamb': 'A day, for each lamb she carries',
  'feeds.lambed': 'Nuts once they have lambed',
  'feeds.buckets': 'Mineral or molasses buckets',
  'housing.lambing': 'Do they come in to lamb?',
  'housing.pens': 'Pens in the shed',
  'housing.pens[].name': 'What is the pen called?',
  'housing.pens[].at': 'Where it stands on the plan of the shed',
  'housing.lambing-pens': 'How many lambing pens?',
  'print.paper': 'Paper in the printer',
  'print.duplex': 'How does the printer turn the sheet?',
  'print.binding': 'Holes in the binder',
  'print.gloves': 'Large boxes, for gloved hands',
  'ewes[].condition': 'Condition score',
  'ewes[].born': 'Born',
  'ewes[].to-tup': 'Goes to the tup all the same',
};

/** @param {string} section as in the description, such as `ewes[]` @param {string} key */
export function labelOf(section, key) {
  const plain = key.replaceAll('-', ' ');
  return labels[section === '' ? key : `${section}.${key}`] ?? plain.charAt(0).toUpperCase() + plain.slice(1);
}

/** What an item of a list is called: after "Add", and at its head. @type {Record<string, [string, string]>} */
const items = {
  'holding.contacts[]': ['somebody to ring', 'To ring'],
  'groups[]': ['a group', 'Group'],
  'groups[].tups[]': ['a tup', 'Tup'],
  'keeper-days.away[]': ['days away', 'Away'],
  'breeds[]': ['a breed', 'Breed'],
  'jobs[]': ['a job', 'Job'],
  'housing.pens[]': ['a pen', 'Pen'],
  'ewes[].lambs[]': ['a lamb', 'Lamb'],
};

/** @param {string} section @returns {[string, string]} */
export const itemOf = section => items[section] ?? ['one', 'Number'];
