/* The material-plugin interface of ringfill, version 1.0.

   A plugin is a shared library that brings one family of metals: its table, as JSON text, and, where a rule is
   new, a function that answers questions. It exports one thing, the data symbol `ringfill_material_v1`.
   Plain C11, also valid C++; the program that loads it needs no other header and shares no memory with it.

   LIFE CYCLE
     loaded    the program has read `ringfill_material_v1` and copied family, version and table; nothing of the
               plugin has run but its constructors, if it has any
     asked     `answer` is called, any number of times, never two calls at once; the plugin speaks through the
               sink during the call only
     end       the library is never closed; it goes with the process
   There is no open, no close and no handle: the table is the program's to read and check, and a plugin keeps
   no state between two calls.

   WHAT THE PROGRAM PROMISES
     - All text it gives lives until the call returns, all text it takes is copied before the sink returns.
     - Every pointer in a question is valid, every number finite and in the unit its name ends in.
     - Names of a question that the plugin does not know may come at any time, in any order: skip them.
       A value that is not known is absent, never zero: a rule that needs it answers for the worst case.
     - A struct it makes has `size` set to what it knows; a plugin reads no field past `size`, nor the other way.

   WHAT A PLUGIN PROMISES
     - The same question gives the same answer, to the bit.
     - Nothing is printed, opened, exited, aborted or thrown; no thread, locale, working directory, signal
       handler, limit or floating-point mode is changed (so no -ffast-math: it changes the mode when it is loaded).
     - No process is started, no standard stream closed or replaced, nothing left to run at the end of the program
       (atexit, static objects with destructors).
     - Text is UTF-8 without control characters, at most RF_TEXT_LONGEST bytes, and need not end in a nul.
     - A minimum is given whenever one is known, higher rather than lower; what is not known is said in a note.
   A plugin that breaks one is refused with its file and the reason; the program goes on without its family.
   One that ends the program, or puts another in its place, is named and the run fails with status 3.

   HOW IT CHANGES
     A field is only ever appended, with a higher RF_MINOR and a comment that says from which minor it may be
     there; names, flags, topics and figures are added to the lists below. A change of meaning, unit or order
     gets another symbol, `ringfill_material_v2`, and both are served for one major release. */
#ifndef RINGFILL_MATERIAL_ABI_H
#define RINGFILL_MATERIAL_ABI_H

#include <stdint.h>

#define RF_MINOR 0u
#define RF_SYMBOL "ringfill_material_v1"
#define RF_TEXT_LONGEST 2000u    /* bytes of any text but the table */
#define RF_TABLE_LONGEST 4000000u /* bytes of the table */

#ifdef __cplusplus
#define RF_NOEXCEPT noexcept
extern "C" {
#else
#define RF_NOEXCEPT
#endif

/* UTF-8, not ended by a nul. An empty text has size 0; its data may then be null. */
typedef struct rf_text {
    const char *data;
    uint64_t size;
} rf_text;

/* A number by its name, in the unit the name ends in.
   In a question on `preheat` and `advice`:
     base_C_pct, base_Mn_pct, ...     composition of the base metal, percent by mass, by element symbol: the mill
                                      certificate's where it says so, else the table's (the end that asks for more)
     deposit_C_pct, ...               composition of the filler's deposit, likewise
     reached_CE_IIW_pct, reached_CET_pct, reached_Pcm_pct, reached_chemical_carbon_pct
                                      the largest index that any composition within the standard's maxima and its cap on
                                      the carbon equivalent reaches, chemical carbon by Seferian; absent: that of base_*
     wall_m                           thickness that governs, the wall of the boss after the skim
     combined_thickness_m             2 x wall, at most 0.1
     restraint                        1 low, 2 medium, 3 high
     heat_input_J_per_m               the lowest as laid, with the thermal efficiency of the process
     hydrogen_mL_per_100g             diffusible, of the filler: an upper limit
     hydrogen_is_measured             1: the figure above was measured (ISO 3690), not a class's limit
     ambient_K                        air and metal at the site
     yield_MPa, tensile_MPa           of the base metal, the least its standard asks for
     tempering_K                      the base metal was tempered at
     softens_over_K                   the base metal was quenched, and heat over this softens it
     grade_is_denied                  1: the mill certificate is of another steel; yield_MPa is the grade's, and no
                                      more than a hint of what this one has at least
     structure                        1 ferritic, 2 martensitic, 3 austenitic, 4 cast iron, 5 nickel, 6 copper
     preheat_min_K                    on `advice`: the least preheat that rules
     interpass_max_K                  on `advice`: the highest temperature that a document lets a ring begin at
   In an answer, given to `value`:
     CE_IIW_pct, Pcm_pct, CET_pct, CEN_pct   carbon equivalents of the base metal
     interpass_max_K                  highest temperature to begin a ring at
     post_heat_K, post_heat_s         hold after the last ring, before it cools
     cooling_max_K_per_h              slow cooling: no faster than this
     crack_test_wait_s                least time from cold to the crack test */
typedef struct rf_number {
    rf_text name;
    double value;
} rf_number;

/* What a formula is made of, in the unit the formula takes it in: { "CET", 0.41, "%" }. */
typedef struct rf_input {
    rf_text symbol;
    double value;
    rf_text unit; /* empty: a plain number */
} rf_input;

/* A figure with how it was reached.
   formula: arithmetic (+ - * / ^ and brackets) with pi, sqrt, exp, log10, tanh, ceil, floor, min, max of the
   inputs; it gives a method's minimum in degC and a value in the unit of its name. May be empty for a figure that
   stands in a table of its source; the inputs are then those that it was looked up with. */
typedef struct rf_figure {
    uint32_t size;
    uint32_t flags; /* RF_OUT_OF_COMPOSITION and so on; 0 for a value */
    rf_text name;   /* of a method, for people: "EN 1011-2 method B"; of a value, from the list above */
    double number;  /* of a method: its minimum in K; of a value: in the unit of its name */
    rf_text formula;
    const rf_input *inputs;
    uint64_t input_count;
    rf_text source; /* key of the family's bibliography; never empty */
    rf_text note;   /* the end of a sentence: why it is out of range, how it was looked up; may be empty */
} rf_figure;

/* flags of a method */
#define RF_OUT_OF_COMPOSITION 1u /* the metal lies outside what the method was made for */
#define RF_OUT_OF_THICKNESS 2u   /* the wall does */
#define RF_AT_EDGE 4u            /* so it was taken at the edge of its range, on the side that asks for more */
#define RF_NONE_NEEDED 8u        /* it asks for no preheat; `number` is not read */
#define RF_NO_FIGURE 16u         /* it asks for preheat and gives no figure; `number` is not read */
#define RF_SECOND_OPINION 32u    /* told beside the others; it does not rule. With RF_AT_EDGE: only where no other does */
#define RF_NOT_USABLE 64u        /* it has no answer here, `note` says why; `number` is not read */

/* Where an answer goes. `context` is handed back as it is. */
typedef struct rf_sink {
    uint32_t size;
    uint32_t reserved;
    void *context;
    void (*value)(void *context, const rf_figure *figure) RF_NOEXCEPT;
    void (*method)(void *context, const rf_figure *figure) RF_NOEXCEPT;
    /* kind: soak, slow_cooling, post_heat, crack_test, interpass, technique. text: one or two whole sentences. */
    void (*advice)(void *context, rf_text kind, rf_text text, rf_text source) RF_NOEXCEPT;
    /* Why the question cannot be answered. where: the name of the value at fault, or empty. */
    void (*fault)(void *context, rf_text where, rf_text what) RF_NOEXCEPT;
} rf_sink;

/* topic: "preheat" (methods and values), "advice" (advice and values); others may be added.
   grade: the base metal's name in the table; filler: family/name. */
typedef struct rf_question {
    uint32_t size;
    uint32_t reserved;
    rf_text topic;
    rf_text grade;
    rf_text filler;
    const rf_number *numbers;
    uint64_t number_count;
} rf_question;

typedef int32_t rf_status;
#define RF_DONE 0        /* the answer is in the sink; on `preheat`: at least one method */
#define RF_REFUSED 1     /* a fault is in the sink */
#define RF_UNSUPPORTED 2 /* no rule of this family for the topic or the grade: the table says it all */

typedef rf_status (*rf_answer)(const rf_sink *sink, const rf_question *question) RF_NOEXCEPT;

/* What a plugin exports: `const rf_material_plugin ringfill_material_v1 = { sizeof(rf_material_plugin), RF_MINOR, ... };` */
typedef struct rf_material_plugin {
    uint32_t size;
    uint32_t minor;
    const char *family;  /* [a-z][a-z0-9_]{0,39}, ended by a nul */
    const char *version; /* of the plugin, for people; 1 to 40 bytes, ended by a nul */
    rf_text table;       /* the family's table, ringfill-family/1 */
    rf_answer answer;    /* may be null: the table says it all */
} rf_material_plugin;

#ifdef __cplusplus
}
#endif

#endif
