/** The same time of day so many days later (earlier where negative). */
export function daysLater(date: Date, days: number): Date {
  return new Date(date.getTime() + days * 86_400_000);
}
