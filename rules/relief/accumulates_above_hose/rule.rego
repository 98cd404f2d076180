# METADATA
# title: A relief device lets the pressure climb above a hose while it blows
# description: |
#   A device opens fully only some way above its set pressure, 10 % as a rule. A vessel code grants a
#   vessel that much; nothing grants it to a hose.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: [weakest_is_hose]
#   needs: [reliefs.set_kpa, reliefs.weakest_kpa]
#   message: >-
#     {part} is set at {set_kpa} and lets the pressure climb 10 % above that; {weakest} holds {rated_kpa}
#     and has no such allowance
#   action: >-
#     Set the device at least a tenth lower than the hose rating (rating divided by 1.1), or fit a
#     stronger hose.
#   basis:
#     - document: ASME BPV Code Section VIII Division 1
#       edition: "1992"
#       clause: "UG-125(c)"
#       standing: published
#     - document: 29 CFR 1926.302
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)"
#       standing: published
package rules.relief.accumulates_above_hose

report contains {
	"subject": r.id,
	"part": r.id,
	"weakest": r.weakest,
	"set_kpa": r.set_kpa,
	"rated_kpa": r.weakest_kpa,
} if {
	some r in input.reliefs
	not _window_of_law(r)
	r.weakest_is_hose

	# One that is set above the hose is the matter of another rule.
	r.set_kpa <= r.weakest_kpa + 1

	# The set pressure is rounded up and the rating down, which is taken back.
	(r.set_kpa - 1) * 110 > (r.weakest_kpa + 1) * 100
}

# 29 CFR 1910.110(b)(10)(xii) wants the relief device between shut-offs on liquid LP-gas at up to 500 psig = 3447.4 kPa,
# above the 350 psig of the hose it protects. Where that law applies another rule asks for the hose maker's word.
_window_of_law(r) if {
	r.on_lpg_liquid
	"29 CFR 1910.110" in input.line.regimes
	r.set_kpa <= 3448
}
