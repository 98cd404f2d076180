# METADATA
# title: A relief device is set above the weakest part it protects
# description: |
#   A device protects nothing that fails before it opens. What counts is the lowest rating of all it
#   stands for, hoses included, and not the rating of the vessel.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: []
#   needs: [reliefs.set_kpa, reliefs.weakest_kpa]
#   message: "{part} opens at {need_kpa}, but {weakest}, which it protects, holds only {have_kpa}"
#   action: "Set the device no higher than the lowest rating it protects, or fit a stronger part."
#   basis:
#     - document: 29 CFR 1926.302
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)"
#       standing: published
#     - document: 33 CFR 156.120
#       edition: "CFR 2015 annual edition"
#       clause: "(w)(5)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.relief.set_above_weakest_part

report contains {
	"subject": r.id,
	"part": r.id,
	"weakest": r.weakest,
	"have_kpa": r.weakest_kpa,
	"need_kpa": r.set_kpa,
} if {
	some r in input.reliefs
	not _window_of_law(r)

	# The set pressure is rounded up and the rating down: what is equal in psi may lie one apart.
	r.set_kpa > r.weakest_kpa + 1
}

# 29 CFR 1910.110(b)(10)(xii) wants the relief device between shut-offs on liquid LP-gas at up to 500 psig = 3447.4 kPa,
# above the 350 psig of the hose it protects. Where that law applies another rule asks for the hose maker's word.
_window_of_law(r) if {
	r.on_lpg_liquid
	"29 CFR 1910.110" in input.line.regimes
	r.set_kpa <= 3448
}
