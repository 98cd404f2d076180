# METADATA
# title: A part can get hotter than it may
# description: |
#   Above its highest temperature a hose or fitting has no pressure rating at all. Lowering the pressure
#   does not make up for it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: limits
#   scope: ["!is_seal"]
#   needs: [limits.highest_ck, limits.hottest_ck]
#   message: "{part} ({what}) is good up to {have_ck} but can reach {need_ck}"
#   action: "Fit a part made for this temperature, or keep the fluid and the sun off it."
#   basis:
#     - document: EN 12115
#       edition: "2021"
#       clause: "scope"
#       standing: published
#     - document: EN 14420-7
#       edition: "2022 final draft"
#       clause: "scope"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.above_limit

report contains {"subject": l.id, "part": l.part, "what": l.what, "have_ck": l.highest_ck, "need_ck": l.hottest_ck} if {
	some l in input.limits
	not l.is_seal
	l.highest_ck < l.hottest_ck
}
