/** Said once at each place and kept in help, on the phone and on the ground screen. Our own words; calm, and none of them a licence to teach or to treat. */
export const cautions: readonly string[] = [
  "Look all round and overhead before the first swing. Nobody stands within reach of the club, and nobody walks in.",
  "A rod that sticks out of the grip can reach your ribs, arm or face. With the rod on, swing slowly, stop after impact and leave out the full follow-through.",
  "Never hit a ball with the rod on. Take it off first.",
  "If something hurts, stop. Pain is no part of this.",
  "On a range, its rules come first: where to stand, when to fetch, what may lie on the ground.",
  "Overcue measures where the club points. It is no doctor and no teacher, and it does not replace one.",
];
