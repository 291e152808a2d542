/* Questions: words to pick from a list, which takes the panel's place, or the form's if its words
 * need the room. */
#ifndef SCREEN_QUESTION_H
#define SCREEN_QUESTION_H

#include "screen/stage.h"

int question_choose(struct stage *stage, const struct question *question);

#endif
