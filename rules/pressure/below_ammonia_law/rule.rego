# METADATA
# title: An ammonia hose is rated below what the law asks
# description: |
#   The US ammonia rule fixes a least working pressure for every hose that is under the container's
#   pressure, however low the pressure is on the day.
#   A hose behind a regulator has a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "!low_side", "regime=29 CFR 1910.111"]
#   needs: [hoses.rated_kpa]
#   message: >-
#     {part} has a working pressure of {have_kpa}; the law asks for {need_kpa} on ammonia under container
#     pressure
#   action: "Fit a hose made and marked for anhydrous ammonia with at least this working pressure."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(ii)"
#       standing: published
package rules.pressure.below_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.rated_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	not h.low_side
	h.rated_kpa < _least
}

# 350 psig = 2413.1 kPa, rounded down like the rating it is compared with.
_least := 2413
