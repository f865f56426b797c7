import type { BoothResult } from '@boothwright/assessment';
import { millimetresText, roomLengthText } from '../numbers/trade-units.js';
import { bullets, escapeMarkdown, paragraphs, table } from './markdown.js';

/** Where the booth stands in its room: what is free around and above it, and what is in the way. */
export function placeHover(boothName: string, { moving }: BoothResult): string | undefined {
  if (!moving || (moving.sides === null && moving.roof === null)) return undefined;
  const { sides, roof, obstacles, doors, problems } = moving;
  const name = escapeMarkdown(boothName);
  const inRoom = problems.filter(({ id }) => id !== 'panel-does-not-go-through');
  const told = new Set(problems.map(({ text }) => text));
  return paragraphs(
    inRoom.length === 0
      ? `**${name} fits where it stands**${roof ? `, ${millimetres(roof.aboveBoothM)} free above it` : ''}`
      : `**${inRoom.length === 1 ? 'One thing is' : `${inRoom.length} things are`} in the way of ${name}**`,
    inRoom.length > 0 && bullets(inRoom.map(({ text, fix }) => `${escapeMarkdown(text)} → ${escapeMarkdown(fix)}`)),
    sides &&
      table(
        ['side', 'free', 'up to', `room to work, ${millimetresText(0.45)} and more`],
        sides.map(({ side, freeM, obstacle, reachable }) => [
          side,
          millimetres(freeM),
          obstacle === null ? 'the wall' : escapeMarkdown(obstacle),
          reachable ? 'yes' : 'no',
        ]),
      ),
    roof && roofText(roof),
    bullets(
      [...obstacles.map(({ text }) => text), ...doors.map(({ text }) => text)]
        .filter((text) => !told.has(text))
        .map(escapeMarkdown),
    ),
  );
}

/** Whether a thing in the room is in the way of a booth. Undefined where it is not known. */
export function obstacleHover(obstacle: string, boothName: string, { moving }: BoothResult): string | undefined {
  const found = moving?.obstacles.find(({ name }) => name === obstacle);
  if (found === undefined) return undefined;
  return paragraphs(
    `**${found.collides ? 'In the way' : 'Not in the way'} of ${escapeMarkdown(boothName)}**`,
    escapeMarkdown(found.text),
  );
}

/** What a door needs to open. Undefined where it is not known. */
export function swingHover(door: string, { moving }: BoothResult): string | undefined {
  const found = moving?.doors.find((each) => each.door === door);
  return found && escapeMarkdown(found.text);
}

/** How the roof goes on. */
export function roofHover({ moving }: BoothResult): string | undefined {
  return moving?.roof ? roofText(moving.roof) : undefined;
}

function roofText({ text, ceilingM, ceilingIs, aboveBoothM }: NonNullable<NonNullable<BoothResult['moving']>['roof']>) {
  return `Roof: ${escapeMarkdown(text)} (${millimetres(aboveBoothM)} from the top of the booth to the ${escapeMarkdown(ceilingIs)} at ${roomLengthText(ceilingM)})`;
}

function millimetres(metres: number): string {
  return Math.abs(metres) < 1 ? millimetresText(metres) : roomLengthText(metres);
}
