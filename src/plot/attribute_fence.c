/* Fences and their gates. */
#include "plot/attribute_rows.h"

static const char *const leaf_words[] = { "bought", "offcut", NULL };

#define AT(name) [FENCE_##name - FENCE_HEIGHT]

static const struct attribute_row rows[] = {
	AT(HEIGHT) = { "height", "Height", LENGTH(INCHES(12), METRES(4)), IS_LENGTH(INCHES(36)),
		.metric = IS_LENGTH(MM(900)), .subject = SUBJECT_FENCE },
	AT(SECTION) = { "section", "Post to post, centres", LENGTH(INCHES(24), METRES(6)),
		IS_LENGTH(INCHES(96)), .metric = IS_LENGTH(MM(2400)), .subject = SUBJECT_FENCE },
	AT(POST) = { "post", "Post, square", LENGTH(INCHES(1), INCHES(12)),
		IS_LENGTH(INCHES(7) / 2), .metric = IS_LENGTH(MM(90)), .subject = SUBJECT_FENCE },
	AT(GATE_POST) = { "gate-post", "Gate's post, square", LENGTH(INCHES(1), INCHES(12)),
		.derived = "as the others", .subject = SUBJECT_FENCE },
	AT(GAP) = { "gap", "Gap below", LENGTH(0, INCHES(24)), IS_LENGTH(INCHES(2)),
		.metric = IS_LENGTH(MM(50)), .subject = SUBJECT_FENCE },
	AT(RAILS) = { "rails", "Rails of a panel", COUNT(1, 6),
		.derived = "2, 3 above 4 ft", .derived_metric = "2, 3 above 1.2 m",
		.subject = SUBJECT_FENCE },
	AT(DEPTH) = { "depth", "Post in the ground", LENGTH(INCHES(6), METRES(3)),
		.derived = "half the height, 24 in or frost, the largest",
		.derived_metric = "half the height, 600 mm or frost, the largest",
		.subject = SUBJECT_FENCE },
	AT(HOLE) = { "hole", "Hole across", LENGTH(INCHES(2), METRES(1)),
		.derived = "three posts across", .subject = SUBJECT_FENCE },
	AT(GRAVEL) = { "gravel", "Gravel in the hole", LENGTH(0, METRES(1)), IS_LENGTH(INCHES(6)),
		.metric = IS_LENGTH(MM(150)), .subject = SUBJECT_FENCE },
	AT(INSET) = { "inset", "In from the boundary", LENGTH(0, METRES(1)),
		.derived = "half a hole", .subject = SUBJECT_FENCE },
	AT(GATE_GAPS) = { "clearance", "Gaps of a gate, all", LENGTH(0, INCHES(12)),
		IS_LENGTH(INCHES(5) / 4), .metric = IS_LENGTH(MM(30)), .subject = SUBJECT_FENCE },
	AT(LEAF) = { "leaf", "Widest leaf of a gate", LENGTH(INCHES(12), METRES(3)),
		IS_LENGTH(INCHES(48)), .metric = IS_LENGTH(MM(1200)), .subject = SUBJECT_FENCE },
	/* The same keyword: a length is the width, a word what leaves are made of. */
	AT(LEAF_FROM) = { "leaf", "Leaves of gates", CHOICE(leaf_words), IS_NUMBER(LEAF_BOUGHT),
		.subject = SUBJECT_FENCE },
};

const struct attribute_table fence_attributes = ATTRIBUTE_TABLE("fence", FENCE_HEIGHT, rows);
