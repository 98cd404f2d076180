# METADATA
# title: The law's relief window for LP-gas lies above what the relief protects
# description: |
#   The law wants the device between shut-offs on liquid LP-gas inside a window that ends at 500 psig, while
#   the hose it protects is rated lower. The hose lives on its burst ratio there, which its maker must allow.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: reliefs
#   scope: [on_lpg_liquid, "regime=29 CFR 1910.110"]
#   needs: [reliefs.set_kpa, reliefs.weakest_kpa]
#   message: "{part} opens at {need_kpa}, while {weakest} is rated {have_kpa}"
#   action: Get the hose maker's written word for that pressure, and ask the authority which figure it wants.
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(10)(xii)"
#       standing: published
package rules.relief.lpg_window_above_hose

report contains {
	"subject": r.id,
	"part": r.id,
	"weakest": r.weakest,
	"have_kpa": r.weakest_kpa,
	"need_kpa": r.set_kpa,
} if {
	some r in input.reliefs
	r.on_lpg_liquid
	"29 CFR 1910.110" in input.line.regimes
	r.set_kpa > r.weakest_kpa + 1
}
