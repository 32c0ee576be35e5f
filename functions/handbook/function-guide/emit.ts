import type { RegisteredFunction } from '../../runtime/registry.ts';
import type { Family } from '../../runtime/families.ts';
import { families } from '../../runtime/families.ts';
import { cautions } from '../cautions.ts';
import { functionSection } from './function-section.ts';
import { installPages } from '../install/index.ts';
import { familyPage, guideLink } from './links.ts';
import type { Html } from '../markup.ts';
import { html } from '../markup.ts';
import { page } from './page.ts';
import { styleSheet } from '../style.ts';
import { valuesBody } from './values-page.ts';

/** The function guide: file name → text. Works from a folder without network, and on paper. */
export function emitGuide(
  functions: readonly RegisteredFunction[],
  version: string,
): Readonly<Record<string, string>> {
  const used = (Object.keys(families) as Family[])
    .map((family) => ({ family, members: functions.filter((each) => each.family === family) }))
    .filter(({ members }) => members.length > 0);
  const pages: Record<string, string> = {
    'guide.css': styleSheet,
    'index.html': page({ title: 'All functions', body: indexBody(used), version }),
    'values.html': page({ title: 'How values are read', body: valuesBody(), version }),
  };
  for (const { family, members } of used) {
    const body = html`${familyIntro(members)}${members.map(functionSection)}`;
    pages[familyPage(family)] = page({ title: families[family], body, version });
  }
  for (const [name, { title, body }] of Object.entries(installPages)) {
    pages[name] = page({ title, body, version });
  }
  return pages;
}

interface FamilyMembers {
  readonly family: Family;
  readonly members: readonly RegisteredFunction[];
}

function indexBody(used: readonly FamilyMembers[]): Html {
  return html`<p>
      Worksheet functions for servicing small factory-sealed air conditioners by weighed ounces. Names are
      written here as Excel and LibreOffice take them, such as <code>=OUNCE.SATTEMP("R-410A",62)</code>;
      Google Sheets and ONLYOFFICE take <code>=OUNCE_SATTEMP("R-410A",62)</code>.
    </p>
    <ol class="cautions">
      ${cautions.map((caution) => html`<li>${caution}</li>`)}
    </ol>
    ${used.map(
      ({ family, members }) =>
        html`<h2><a href="${familyPage(family)}">${families[family]}</a></h2>
          <ul>
            ${members.map((member) => html`<li><a href="${guideLink(member)}">${member.id}</a>: ${member.summary}</li> `)}
          </ul> `,
    )}`;
}

function familyIntro(members: readonly RegisteredFunction[]): Html {
  const links = members.map(
    (member, index) => html`${index === 0 ? '' : ' · '}<a href="${guideLink(member)}">${member.id}</a>`,
  );
  return html`<p>${links}</p>
    <ol class="cautions">
      ${cautions.map((caution) => html`<li>${caution}</li>`)}
    </ol> `;
}
