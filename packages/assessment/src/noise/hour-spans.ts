import { hoursOfDay } from './hour-states.js';

/** Contiguous hours in words: `22:00 to 06:00`; all of them as `any hour`. */
export function hourSpans(wanted: readonly boolean[]): string[] {
  if (wanted.every(Boolean)) return ['any hour'];
  const spans: string[] = [];
  for (let hour = 0; hour < hoursOfDay; hour += 1) {
    const before = wanted[(hour + hoursOfDay - 1) % hoursOfDay];
    if (!wanted[hour] || before) continue;
    let end = hour;
    while (wanted[end % hoursOfDay]) end += 1;
    spans.push(`${clock(hour)} to ${clock(end % hoursOfDay)}`);
  }
  return spans;
}

function clock(hour: number): string {
  return `${String(hour).padStart(2, '0')}:00`;
}

/** Minutes after midnight as `13:30`. */
export function clockOfMinutes(minutes: number): string {
  const day = Math.round(minutes) % (hoursOfDay * 60);
  return `${String(Math.floor(day / 60)).padStart(2, '0')}:${String(day % 60).padStart(2, '0')}`;
}
