/* What the picture shows of each cell, whatever its size: its letter, its colours, the lines along
 * its sides. What is carried lies where it would be stamped. */
#ifndef SCREEN_SCENE_H
#define SCREEN_SCENE_H

#include "editor/light.h"
#include "screen/colour.h"

#include <wchar.h>

/* What comes later is drawn rather than what comes before. */
enum border { BORDER_NONE, BORDER_WALL, BORDER_EXISTING, BORDER_TO_LAY, BORDER_FENCE };

struct scene {
	const struct editor *editor;
	struct mirror mirror;
	enum colour_level level;
	struct rectangle outline; /* what is pegged or marked */
	bool has_outline;
	struct rectangle stamp;   /* what is carried, at the cursor */
	bool has_stamp;
	int ranks[128];           /* of each letter among those of its class */
	const struct levels *levels; /* those that are shown; NULL: none are */
	struct drop_range range;     /* of these; where none are, of 0 alone */
	struct light light;
};

/* The editor is drawn (editor_draw); the scene holds until it changes. */
struct scene scene_of(const struct editor *editor);

/* '\0' beyond the plan. */
char scene_letter(const struct scene *scene, int x, int y);
/* The commonest letter of cells inside the plan. */
char scene_commonest(const struct scene *scene, struct rectangle cells);
/* Of ground with that letter, and whether it has a pattern. */
struct paint scene_ground(const struct scene *scene, char letter);
bool scene_is_hatched(const struct scene *scene, char letter);
/* Whether it has one that no entry before it has. */
bool scene_has_shade(const struct scene *scene, char letter);
/* Whether ground is in shades of how deep it lies, or of what sun it has, rather than in those of
 * what it is: in 256 colours, while levels are shown that are not all alike, or the sun is. */
bool scene_is_shaded(const struct scene *scene);
bool scene_is_lit(const struct scene *scene);
/* The sign of what sun the middle of cells has; '\0': there is none to show. */
char scene_light(const struct scene *scene, struct rectangle cells);
/* How deep the middle of cells lies, 0..COLOUR_DEPTHS - 1, where levels are shown. */
int scene_depth(const struct scene *scene, struct rectangle cells);
/* Of cells of which this letter is the commonest: in the shade of either. */
struct paint scene_shade(const struct scene *scene, struct rectangle cells, char letter);
/* Of a cell: that of its ground, of an outline or of the cursor. */
struct paint scene_paint(const struct scene *scene, int x, int y);
/* Whether one of the cells is on the outline. */
bool scene_is_outlined(const struct scene *scene, struct rectangle cells);
/* Whether cursor or outline hide a cell's ground, so that only its letter tells what it is. */
bool scene_is_covered(const struct scene *scene, int x, int y);

/* Whether a cell inside the plan shows its letter: where it is covered, at the corners of its patch
 * of one letter, and with colours at every fifth cell along the rim of that. */
bool scene_is_lettered(const struct scene *scene, int x, int y);
/* The sign of a house, or of what is kept, over a cell; '\0': the cell is in neither. */
wchar_t scene_sign(const struct scene *scene, int x, int y);
/* At the right of the cell and below it, a gate being a gap; x and y from -1. */
enum border scene_right(const struct scene *scene, int x, int y);
enum border scene_below(const struct scene *scene, int x, int y);

#endif
