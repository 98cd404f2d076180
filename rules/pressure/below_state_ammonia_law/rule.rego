# METADATA
# title: An ammonia hose is rated below what state law asks
# description: |
#   California and Washington fix a least working pressure for every ammonia hose that is under the
#   pressure of the tank.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_ammonia, "regime=8 CCR 510|WAC 296-307-40023|WAC 296-826-40010"]
#   needs: [hoses.rated_kpa]
#   message: >-
#     {part} has a working pressure of {have_kpa}; {law} asks for {need_kpa} on ammonia under tank
#     pressure
#   action: "Fit a hose made and marked for anhydrous ammonia with at least this working pressure."
#   basis:
#     - document: 8 CCR 510
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
#     - document: WAC 296-307-40023
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
#     - document: WAC 296-826-40010
#       edition: "undated public copy"
#       clause: "hose"
#       standing: published
package rules.pressure.below_state_ammonia_law

report contains {
	"subject": h.id,
	"part": h.id,
	"law": law,
	"have_kpa": h.rated_kpa,
	"need_kpa": _least,
} if {
	some law in {"8 CCR 510", "WAC 296-307-40023", "WAC 296-826-40010"}
	law in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	h.rated_kpa < _least
}

# 350 psi = 2413.1 kPa, rounded down like the rating it is compared with.
_least := 2413
