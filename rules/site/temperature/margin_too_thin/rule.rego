# METADATA
# title: A part gets nearer to its highest temperature than the site allows
# description: |
#   The site wants a reserve below the highest temperature that a part, seal or material may see.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: limits
#   scope: []
#   needs: [limits.highest_ck, limits.hottest_ck]
#   message: "{what} of {part} may see {have_ck} and sees {need_ck}: less in reserve than the site wants"
#   action: "Choose a part or material for a higher temperature, or keep the fluid cooler."
#   basis:
#     - document: the site's own limit
#       edition: "limits.yaml"
#       clause: temperature_margin_ck
#       standing: site
package site.temperature.margin_too_thin

report contains {
	"subject": l.id,
	"part": l.part,
	"what": l.what,
	"have_ck": l.highest_ck,
	"need_ck": l.hottest_ck,
} if {
	some l in input.limits
	l.highest_ck >= l.hottest_ck
	l.highest_ck - l.hottest_ck < data.site.limits.temperature_margin_ck
}
