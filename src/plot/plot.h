/* The model of a plot: what its letters mean and the ground they lie on. It knows nothing of
 * quantities, screens or files. */
#ifndef PLOT_PLOT_H
#define PLOT_PLOT_H

#include "plot/fence.h"
#include "plot/levels.h"
#include "plot/plants.h"
#include "plot/surroundings.h"

/* What the ground can be; open ground is left as it is, boundary is what lies beyond the plan. */
enum plot_class { CLASS_BED, CLASS_PATH, CLASS_LAWN, CLASS_FIXTURE, CLASS_OPEN, CLASS_BOUNDARY };
enum { CLASSES = CLASS_BOUNDARY + 1, SIDE_MOST = 2048, NAME_MOST = 60, NOTE_MOST = 500 };

#define OPEN_GROUND '.'

/* An entry of the legend. */
struct entry {
	char letter; /* a-z, or A-Z for a fixture */
	enum plot_class class; /* CLASS_BED .. CLASS_FIXTURE */
	char *name;
	struct block block;
};

/* Goods that are bought as the rest, but that nobody can reckon from the ground. */
struct extra {
	char *name; /* owned */
	struct amount amount; /* of QUANTITY_GOODS */
};

/* What one region is called, besides what its letter stands for: that which holds the cell. */
struct name {
	struct place at; /* a cell of the ground */
	char *text;      /* owned */
};

/* Several may be in one region: the first counts. Start from NAMES_EMPTY, end with names_fini. */
struct names {
	struct name *items; /* owned */
	size_t count, capacity;
};
#define NAMES_EMPTY ((struct names){ NULL, 0, 0 })

/* All of a plot but its ground: what an undo step keeps whole when it changes. */
struct details {
	struct block head, allow, rates; /* rates: hours that work takes */
	struct entry *legend;
	size_t legend_count, legend_capacity;
	struct fence *fences;
	size_t fence_count, fence_capacity;
	struct plants plants;
	struct surroundings around;
	struct levels levels;
	struct finish finish;
	struct names names;
	struct extra *extras;
	size_t extra_count, extra_capacity;
};

/* Row-major letters, OPEN_GROUND or one of the legend's. */
struct ground {
	int columns, rows; /* 1..SIDE_MOST */
	char *cells;
};

struct plot {
	struct details details;
	struct ground ground;
};

/* An empty plot has no legend and no ground; plot_fini leaves it so again. */
void plot_init(struct plot *plot);
void plot_fini(struct plot *plot);

void details_fini(struct details *details);
struct details details_copy(const struct details *details);
bool details_equal(const struct details *a, const struct details *b);
/* Of their names, extra goods alone. */
bool names_equal(const struct names *a, const struct names *b);
bool extras_equal(const struct details *a, const struct details *b);
/* Appends an entry, taking over name; its attributes are unset. */
struct entry *details_add_entry(struct details *details, enum plot_class class, char letter,
	char *name);

/* Appends a fence without runs, taking over name; its attributes are unset. */
struct fence *details_add_fence(struct details *details, char *name);
/* Appends a name, taking over text. */
void names_add(struct names *names, struct place at, char *text);
void names_remove(struct names *names, size_t index);
void names_fini(struct names *names);
/* Appends extra goods, taking over name. */
void details_add_extra(struct details *details, char *name, struct amount amount);
/* What the amount of extra goods may be. */
extern const struct value_rule extra_rule;

/* Open ground of the given size. */
void ground_init(struct ground *ground, int columns, int rows);
struct ground ground_copy(const struct ground *ground);
void ground_fini(struct ground *ground);
bool ground_holds(const struct ground *ground, int x, int y);
/* The cell, or the one of the ground that is nearest to it. */
struct place ground_nearest(const struct ground *ground, struct place cell);
/* How many cells. */
size_t ground_count(const struct ground *ground);
/* x, y must be inside. */
char *ground_at(const struct ground *ground, int x, int y);
/* x, y must be inside. */
char ground_cell(const struct ground *ground, int x, int y);

/* NULL where no entry has the letter. */
const struct entry *plot_entry(const struct plot *plot, char letter);
/* CLASS_OPEN for OPEN_GROUND. */
enum plot_class plot_class_of(const struct plot *plot, char letter);
enum units plot_units(const struct plot *plot);
nm plot_cell(const struct plot *plot);
/* "bed", "path" ... "boundary", as in the format and the takeoff. */
const char *class_word(enum plot_class class);
/* The block kind of an entry's class. */
enum block_kind class_block(enum plot_class class);
/* True for a letter that an entry of the class may have. */
bool class_takes_letter(enum plot_class class, char letter);

#endif
